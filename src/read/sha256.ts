import { createHash } from 'node:crypto';

/** SHA-256 in hexadecimal; of a text as UTF-8. */
export const sha256 = (bytes: Uint8Array | string): string =>
  createHash('sha256').update(bytes).digest('hex');
