/** Text of a file's own syntax as bytes: every sign is one byte. Node's Buffer is quickest; a browser has none. */
type Encoder = (text: string) => Uint8Array;

/** Puts the text's bytes in their place. */
type Placer = (text: string, into: Uint8Array, at: number) => void;

/** Signs beyond one byte lose their upper part, as Buffer has it. */
const placeBySign: Placer = (text, into, at) => {
  for (let index = 0; index < text.length; index += 1) into[at + index] = text.charCodeAt(index);
};

const bySign: Encoder = (text) => {
  const bytes = new Uint8Array(text.length);
  placeBySign(text, bytes, 0);
  return bytes;
};

const hasBuffer = typeof Buffer !== 'undefined';

export const latin1Bytes: Encoder = hasBuffer ? (text) => Buffer.from(text, 'latin1') : bySign;

export const placeLatin1: Placer = hasBuffer
  ? (text, into, at) => void Buffer.prototype.latin1Write.call(into, text, at)
  : placeBySign;
