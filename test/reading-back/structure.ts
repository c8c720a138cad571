/** Tables of a read PDF put together from tags and marked content, over all pages. */
import type { ReadNode, ReadPage, ReadPdf } from './read-pdf.ts';

export interface ReadCell {
  role: 'TH' | 'TD';
  text: string;
}

const isNode = (child: ReadNode | string): child is ReadNode => typeof child !== 'string';

export function nodesWithin(node: ReadNode, role: string): ReadNode[] {
  const below = node.children.filter(isNode).flatMap((child) => nodesWithin(child, role));
  return node.role === role ? [node, ...below] : below;
}

export function rolesWithin(node: ReadNode): string[] {
  return [node.role, ...node.children.filter(isNode).flatMap(rolesWithin)];
}

/** What an element says, words at line ends joined as they stand. */
export function spokenText(node: ReadNode, page: ReadPage): string {
  const ids = (from: ReadNode): string[] =>
    from.children.flatMap((child) => (isNode(child) ? ids(child) : [child]));
  return ids(node)
    .flatMap((id) => page.texts.filter((text) => text.contentId === id).map(({ text }) => text))
    .join(' ')
    .replace(/- /g, '-')
    .replace(/\s+/g, ' ')
    .trim();
}

/** Rows × cells of every table row in the document, in reading order. */
export function tableRows(pdf: ReadPdf): ReadCell[][] {
  return pdf.pages.flatMap((page) => {
    const rows = page.tree === null ? [] : nodesWithin(page.tree, 'TR');
    // A table over several pages shows all its rows in each page's tree; those of other pages say nothing there.
    const here = rows.filter((row) => spokenText(row, page) !== '');
    return here.map((row) =>
      row.children.filter(isNode).map((cell) => ({
        role: cell.role === 'TH' ? ('TH' as const) : ('TD' as const),
        text: spokenText(cell, page),
      })),
    );
  });
}
