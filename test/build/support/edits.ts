/** What bakers do to their files, as edits of a kitchen laid out in a folder. */
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export interface Edit {
  name: string;
  /** Does nothing where the kitchen has no such file. */
  make(folder: string, step: number): void;
}

/** The first place in a file, or in the first file of a folder. */
function change(path: string, from: RegExp, to: string): void {
  if (!existsSync(path)) return;
  const names = path.endsWith('.yaml') ? [path] : readdirSync(path).sort();
  const [first] = names.map((name) => (name === path ? path : join(path, name)));
  if (first === undefined) return;
  const text = readFileSync(first, 'utf8');
  if (!from.test(text)) throw new Error(`${first} has no ${from}`);
  writeFileSync(first, text.replace(from, to));
}

/** The first tin's, each key on a line or all on one. */
const TIN_DEPTH = /^( +(?:- \{ id: .*)?depth: )[^,}\n]+/m;

export const EDITS: readonly Edit[] = [
  {
    name: 'a recipe weighed anew',
    make: (folder, step) =>
      change(join(folder, 'recipes'), /^ {2}([a-z-]+): \d+ g$/m, `  $1: ${200 + (step % 9)} g`),
  },
  {
    name: 'a recipe of another name, with signs that no page had',
    make: (folder, step) => change(join(folder, 'recipes'), /^name: .*$/m, `name: Sponge Æ ${step}`),
  },
  {
    name: 'a tin of another depth',
    make: (folder, step) => change(join(folder, 'kitchen.yaml'), TIN_DEPTH, `$1${70 + (step % 7)} mm`),
  },
  {
    name: 'another accent colour',
    make: (folder, step) =>
      change(join(folder, 'house-style.yaml'), /accent: '?#[0-9a-f]{6}'?/i, `accent: '#00336${step % 9}'`),
  },
  {
    name: 'a flavour of another name',
    make: (folder, step) => change(join(folder, 'flavours'), /^name: .*$/m, `name: Flavour ${step}`),
  },
  {
    name: 'an order with another title',
    make: (folder, step) => change(join(folder, 'orders'), /^title: .*$/m, `title: Order ${step}`),
  },
  {
    name: 'another edition',
    make: (folder, step) =>
      change(join(folder, 'kitchen.yaml'), /^edition: .*$/m, `edition: 2026-11-${10 + (step % 9)}`),
  },
  {
    name: 'a page that comes or goes',
    make(folder) {
      const path = join(folder, 'pages', 'visiting.md');
      if (existsSync(path)) rmSync(path);
      else writeFileSync(path, '---\ntitle: Visiting\norder: 9\n---\nThe shop is behind the church.\n');
    },
  },
];
