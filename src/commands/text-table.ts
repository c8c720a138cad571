/** Columns in a terminal, two spaces apart. */
export type Align = 'left' | 'right';

/** Rows as lines, each cell padded to its column; no spaces at a line's end. */
export function textTable(rows: readonly (readonly string[])[], aligns: readonly Align[]): string[] {
  const widths = aligns.map((_, at) => Math.max(0, ...rows.map((row) => widthOf(row[at] ?? ''))));
  return rows.map((row) => {
    const cells = aligns.map((align, at) => padded(row[at] ?? '', widths[at] ?? 0, align));
    return cells.join('  ').trimEnd();
  });
}

function padded(text: string, width: number, align: Align): string {
  const space = ' '.repeat(width - widthOf(text));
  return align === 'left' ? text + space : space + text;
}

/** In signs, not UTF-16 units. */
function widthOf(text: string): number {
  return [...text].length;
}
