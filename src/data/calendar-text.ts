/**
 * Lines of an iCalendar file as RFC 5545 has them (IETF, 2009; sections 3.1, 3.3.5, 3.3.11; from memory): CRLF
 * after each, none longer than 75 octets, a longer one going on after CRLF and a space; backslash, semicolon, comma
 * and line break escaped in text; instants in UTC, so that no reader needs rules about clocks.
 */
const MOST_OCTETS = 75;

const octets = (letter: string): number => {
  const code = letter.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
};

/** A content line, folded between letters and never inside one, with its CRLF. */
export function foldedLine(line: string): string {
  const parts: string[] = [];
  let part = '';
  let taken = 0;
  for (const letter of line) {
    const more = octets(letter);
    // The space that begins a continued line counts.
    if (taken + more > MOST_OCTETS) {
      parts.push(part);
      part = '';
      taken = 1;
    }
    part += letter;
    taken += more;
  }
  return `${[...parts, part].join('\r\n ')}\r\n`;
}

/** Text as a value; control characters, which the format forbids, are left out. */
export function calendarText(text: string): string {
  return Array.from(text.replace(/\r\n?/g, '\n'))
    .filter((letter) => letter === '\n' || letter === '\t' || (letter >= ' ' && letter !== '\u007f'))
    .join('')
    .replace(/[\\;,]/g, (sign) => `\\${sign}`)
    .replaceAll('\n', '\\n');
}

const two = (value: number): string => String(value).padStart(2, '0');

/** Minutes since 1970-01-01 00:00 UTC as `20261128T140000Z`. */
export function utcStamp(minute: number): string {
  const at = new Date(minute * 60_000);
  const date = `${String(at.getUTCFullYear()).padStart(4, '0')}${two(at.getUTCMonth() + 1)}${two(at.getUTCDate())}`;
  return `${date}T${two(at.getUTCHours())}${two(at.getUTCMinutes())}00Z`;
}
