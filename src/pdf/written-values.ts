/** Values as they stand in a PDF file (PDF 1.7, sections 7.3.3 and 7.3.4, from memory), as the PDF library writes them. */

/** At most six decimals. */
export const writtenNumber = (value: number): string => String(Math.round(value * 1e6) / 1e6);

const ESCAPES: Record<string, string> = {
  '\n': '\\n',
  '\r': '\\r',
  '\t': '\\t',
  '\b': '\\b',
  '\f': '\\f',
  '\\': '\\\\',
  '(': '\\(',
  ')': '\\)',
};

/** Two signs of one byte each for every code unit, after the mark that says so. */
function utf16(text: string): string {
  let bytes = '\u00fe\u00ff';
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    bytes += String.fromCharCode(code >> 8, code & 0xff);
  }
  return bytes;
}

/** Words in brackets, one sign for each byte of the file. */
export function writtenWords(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the seven-bit signs need no second byte.
  const bytes = /^[\u0000-\u007f]*$/.test(text) ? text : utf16(text);
  return `(${bytes.replace(/[\n\r\t\b\f()\\]/g, (sign) => ESCAPES[sign] ?? sign)})`;
}

/** A reference to an object by its number. */
export const writtenReference = (id: number): string => `${id} 0 R`;
