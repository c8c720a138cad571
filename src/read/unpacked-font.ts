/** A font as it can be embedded: WOFF2 (W3C Recommendation WOFF 2.0) unpacked to the TrueType or OpenType font inside. */
import { isWoff2 } from '../domain/woff2-signature.ts';

export interface PackedFont {
  /** As the house style names it; used in messages. */
  name: string;
  bytes: Uint8Array;
}

/** The same file, unpacked where it is packed; null where it is broken. */
export async function unpackedFont(file: PackedFont): Promise<PackedFont | null> {
  if (!isWoff2(file.bytes)) return file;
  // Only those who give such a font wait for its reader.
  const { decompress } = await import('wawoff2');
  try {
    return { name: file.name, bytes: await decompress(file.bytes) };
  } catch {
    return null;
  }
}
