/** The bytes of a PDF's text parts: one for each character, as the format counts them. */

/** Characters above U+00FF keep their low byte only, as in the library that this stands in for. */
export const latin1Bytes = (text: string): Uint8Array => Buffer.from(text, 'latin1');
