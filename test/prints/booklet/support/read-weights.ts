/** What a booklet's tables say of each tin, whichever way round they are set. */
import type { ReadNode, ReadPage } from '../../../reading-back/read-pdf.ts';
import { nodesWithin, spokenText } from '../../../reading-back/structure.ts';

const isNode = (child: ReadNode | string): child is ReadNode => typeof child !== 'string';

interface ReadTable {
  heads: string[];
  rows: { head: string; cells: string[] }[];
}

function rowsOf(table: ReadNode, part: 'THead' | 'TBody', page: ReadPage): string[][] {
  return nodesWithin(table, part)
    .flatMap((node) => nodesWithin(node, 'TR'))
    .map((row) => row.children.filter(isNode).map((cell) => spokenText(cell, page)));
}

const isSaid = (cells: string[]): boolean => cells.some((text) => text !== '');

/** Tables of some pages; one that runs on is given again, with the heads of the page it began on. */
function tablesOf(pages: readonly ReadPage[]): ReadTable[] {
  let begun: string[] = [];
  return pages.flatMap((page) =>
    (page.tree === null ? [] : nodesWithin(page.tree, 'Table')).flatMap((table): ReadTable[] => {
      const rows = rowsOf(table, 'TBody', page).filter(isSaid);
      const heads = rowsOf(table, 'THead', page).find(isSaid);
      if (rows.length === 0) return [];
      begun = heads ?? begun;
      return [{ heads: begun, rows: rows.map(([head = '', ...cells]) => ({ head, cells })) }];
    }),
  );
}

/** 'in spoons' belongs to the ingredient before it. */
function named(names: readonly string[], spoons: string): string[] {
  return names.map((name, index) => (name === spoons ? `${names[index - 1]} ${spoons}` : name));
}

/** 'Tray a b' without its letters. */
const withoutLetters = (name: string): string => name.replace(/( [a-z])+$/, '');

/** Text by tin and what is told of it: ('2 × Tray', 'Butter') → '250'. */
export function toldOnPages(
  pages: readonly ReadPage[],
  tins: ReadonlySet<string>,
  spoons: string,
): Map<string, Map<string, string>> {
  const told = new Map<string, Map<string, string>>();
  const add = (tin: string, what: string, text: string) => {
    const known = told.get(tin) ?? new Map<string, string>();
    told.set(tin, known);
    if (text !== '') known.set(what, text);
  };
  for (const { heads, rows } of tablesOf(pages)) {
    const columns = named(heads.slice(1), spoons);
    const names = named(
      rows.map(({ head }) => head),
      spoons,
    );
    rows.forEach(({ cells }, at) => {
      cells.forEach((text, index) => {
        const [row = '', column = ''] = [names[at], columns[index]].map((name) => withoutLetters(name ?? ''));
        if (tins.has(row)) add(row, columns[index] ?? '', text);
        else if (tins.has(column)) add(column, names[at] ?? '', text);
      });
    });
  }
  return told;
}
