/** Text of a file's own syntax as bytes: every sign is one byte. Node's Buffer is quickest; a browser has none. */
type Encoder = (text: string) => Uint8Array;

/** Signs beyond one byte lose their upper part, as Buffer has it. */
const bySign: Encoder = (text) => {
  const bytes = new Uint8Array(text.length);
  for (let at = 0; at < text.length; at += 1) bytes[at] = text.charCodeAt(at);
  return bytes;
};

export const latin1Bytes: Encoder =
  typeof Buffer === 'undefined' ? bySign : (text) => Buffer.from(text, 'latin1');
