/** Names that a spreadsheet would run: in no CSV file of a whole build, orders and weeks among them, are they formulas. */
import { cpSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { expect, it } from 'vitest';
import { ask } from '../commands/support/command-line.ts';
import { newFolder } from '../commands/support/folders.ts';

const SIGNS = ['=', '+', '-', '@', '＝', ' ='];

/** Every name, title, note and answer of a kitchen made to look like a formula. */
function withFormulas(folder: string): void {
  let at = 0;
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) =>
    /\.(yaml|md)$/.test(file),
  );
  for (const file of files) {
    const text = readFileSync(join(folder, file), 'utf8');
    const changed = text.replace(
      /\b(name|title|note|question|answer): ["']?([^,}"'\n]+)["']?/g,
      (_, key: string, value: string) => {
        at += 1;
        return `${key}: "${SIGNS[at % SIGNS.length]}1+cmd(${value})"`;
      },
    );
    writeFileSync(join(folder, file), changed);
  }
}

it('every CSV writer neutralises them', async () => {
  const folder = newFolder();
  const [content, output] = [join(folder, 'kitchen'), join(folder, 'output')];
  cpSync('test/kitchens/good/us-bakery', content, { recursive: true });
  withFormulas(content);
  const answer = await ask('build', '--content', content, '--output', output, '--only', 'data');
  expect(answer).toMatchObject({ code: 0 });

  const files = readdirSync(join(output, 'data'), { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.csv'),
  );
  const kinds = new Set(files.map((file) => file.split('/')[0]));
  expect(kinds.size).toBeGreaterThanOrEqual(5);
  let neutralised = 0;
  for (const file of files) {
    const rows: string[][] = parse(readFileSync(join(output, 'data', file), 'utf8'), {
      record_delimiter: '\r\n',
    });
    for (const cell of rows.flat()) {
      if (/^-?\d+(\.\d+)?$/.test(cell)) continue;
      expect(cell, file).not.toMatch(/^ *[=+\-@\t\r\n＝＋－＠]/);
      if (cell.startsWith("'")) neutralised += 1;
    }
  }
  expect(neutralised).toBeGreaterThan(files.length);
});
