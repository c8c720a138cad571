/** A booklet read back: its headings by page, its contents and its index as numbers. */
import type { ReadNode, ReadPage, ReadPdf } from '../../../reading-back/read-pdf.ts';
import { nodesWithin, spokenText } from '../../../reading-back/structure.ts';

const HEADINGS = ['H1', 'H2', 'H3'] as const;

export interface ReadHeading {
  page: number;
  level: 1 | 2 | 3;
  text: string;
}

const isNode = (child: ReadNode | string): child is ReadNode => typeof child !== 'string';

/** In reading order within a page. */
function inOrder(node: ReadNode): ReadNode[] {
  return [node, ...node.children.filter(isNode).flatMap(inOrder)];
}

/** What says something here, of these roles, in reading order. */
export function spoken(page: ReadPage, roles: readonly string[]): { role: string; text: string }[] {
  const nodes = page.tree === null ? [] : inOrder(page.tree);
  return nodes
    .filter(({ role }) => roles.includes(role))
    .map((node) => ({ role: node.role, text: spokenText(node, page) }))
    .filter(({ text }) => text !== '');
}

export const headingsOf = (pdf: ReadPdf): ReadHeading[] =>
  pdf.pages.flatMap((page, index) =>
    spoken(page, HEADINGS).map(({ role, text }) => ({
      page: index + 1,
      level: Number(role.slice(1)) as ReadHeading['level'],
      text,
    })),
  );

export interface ContentsLine {
  title: string;
  page: number;
}

/** Lines of the contents as they are read aloud: 'Egg sizes 82'. */
export const contentsOf = (pdf: ReadPdf): ContentsLine[] =>
  pdf.pages.flatMap((page) =>
    spoken(page, ['TOCI']).map(({ text }) => {
      const [, title = '', number = ''] = /^(.*?) (\d+)$/.exec(text) ?? [];
      return { title, page: Number(number) };
    }),
  );

export interface IndexLine {
  name: string;
  pages: number[];
}

function pagesOf(numbers: string): number[] {
  return numbers.split(/,\s*/).flatMap((run) => {
    const [from = 0, to = from] = run.split('–').map(Number);
    return Array.from({ length: to - from + 1 }, (_, index) => from + index);
  });
}

/** Entries on the pages from the heading 'Index' on: 'Butter 9, 12–14'. */
export function indexOf(pdf: ReadPdf, firstPage: number): IndexLine[] {
  return pdf.pages.slice(firstPage - 1).flatMap((page) =>
    (page.tree === null ? [] : nodesWithin(page.tree, 'LI'))
      .map((node) => spokenText(node, page))
      .filter((text) => text !== '')
      .map((text) => {
        const [, name = '', numbers = ''] = /^(.*?) (\d[\d–, ]*)$/.exec(text) ?? [];
        return { name, pages: pagesOf(numbers) };
      }),
  );
}

/** Everything a page says, joined as lines break, in small letters. */
export const wordsOn = (page: ReadPage | undefined): string =>
  (page?.texts ?? [])
    .map(({ text }) => text)
    .join(' ')
    .replace(/([-–/]) /g, '$1')
    .replace(/\s+/g, ' ')
    .toLowerCase();
