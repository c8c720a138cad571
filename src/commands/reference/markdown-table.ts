/** A table in Markdown; what would end a cell is escaped. */
export function markdownTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|').replaceAll('\n', ' ')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

/** Something to type, as code; nothing where there is nothing. */
export const asCode = (text: string): string => (text === '' ? '' : `\`${text}\``);
