/** A zip that is the same, byte for byte, whenever and wherever it is made: fixed dates, files in a fixed order. */
import { zipSync } from 'fflate';

/** A zip holds years from 1980 to 2099 (MS-DOS dates); an edition beyond them is dated at its first day. */
const FIRST_YEAR = 1980;
const LAST_YEAR = 2099;

/** Noon by the local clock, because a zip has no time zone and the library writes local time. */
function zipTime(isoDate: string): Date {
  const [year = 0, month = 1, day = 1] = isoDate.split('-').map(Number);
  const fits = year >= FIRST_YEAR && year <= LAST_YEAR;
  return fits ? new Date(year, month - 1, day, 12) : new Date(FIRST_YEAR, 0, 1, 12);
}

/** `dated` is the ISO date that every file in it carries. */
export function zipOf(
  files: readonly { path: string; bytes: Uint8Array | string }[],
  dated: string,
): Uint8Array {
  const entries = files.map(({ path, bytes }): [string, Uint8Array] => [
    path,
    typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes,
  ]);
  return zipSync(Object.fromEntries(entries), { mtime: zipTime(dated), level: 6 });
}
