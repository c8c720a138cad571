/**
 * Comma-separated values as RFC 4180 (IETF, 2005, section 2; from memory) has them: CRLF after every record, quotes
 * around a cell that needs them, quotes doubled inside. UTF-8 without a byte order mark.
 */
export type Cell = string | number | null;

/** The text of a CSV file; every record must have as many cells as the header. */
export function csvText(header: readonly string[], records: readonly (readonly Cell[])[]): string {
  for (const record of records) {
    if (record.length !== header.length)
      throw new Error(`a record of ${record.length} cells under a header of ${header.length}`);
  }
  return [header, ...records].map((record) => `${record.map(cellText).join(',')}\r\n`).join('');
}

function cellText(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return numberText(cell);
  return quoted(neutral(cell));
}

function numberText(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`not a number for CSV: ${value}`);
  return String(value);
}

/**
 * Text that a spreadsheet would run as a formula gets an apostrophe in front, which makes it text again: also after
 * spaces, which some leave out, and with the wide signs of East Asian keyboards.
 */
function neutral(text: string): string {
  return /^ *[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]/.test(text) ? `'${text}` : text;
}

function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
