/** A font as it can be embedded: WOFF2 (W3C Recommendation WOFF 2.0) unpacked to the TrueType or OpenType font inside. */
import { fail, type Result, succeed } from '../domain/result.ts';

import { isWoff2 } from '../domain/woff2-signature.ts';

export interface PackedFont {
  /** As the house style names it; used in messages. */
  name: string;
  bytes: Uint8Array;
}

/** The same file, unpacked where it is packed. Problem: font-unreadable. */
export async function unpackedFont(file: PackedFont): Promise<Result<PackedFont>> {
  if (!isWoff2(file.bytes)) return succeed(file);
  // Only those who give such a font wait for its reader.
  const { decompress } = await import('wawoff2');
  try {
    return succeed({ name: file.name, bytes: await decompress(file.bytes) });
  } catch {
    return fail({
      code: 'font-unreadable',
      severity: 'error',
      message: `the font '${file.name}' could not be unpacked`,
      hint: 'The download may be broken; give the file again, or the TTF or OTF of the same cut.',
    });
  }
}
