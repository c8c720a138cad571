/**
 * Which pages share a sheet that is folded once and stapled in the fold? With N pages (a multiple of four) and
 * sheets counted from the outside: front N − 2i | 1 + 2i, back 2 + 2i | N − 1 − 2i. Pages are counted from 1.
 */
export interface SheetSide {
  left: number;
  right: number;
}

export interface FoldedSheet {
  front: SheetSide;
  back: SheetSide;
}

/**
 * The sheets of one gathering, outermost first. Throws unless the number of pages is a multiple of four.
 * @example foldOrder(4) // [{ front: { left: 4, right: 1 }, back: { left: 2, right: 3 } }]
 */
export function foldOrder(pages: number): FoldedSheet[] {
  if (pages % 4 !== 0) throw new Error(`${pages} pages do not fill folded sheets`);
  return Array.from({ length: pages / 4 }, (_, sheet) => ({
    front: { left: pages - 2 * sheet, right: 1 + 2 * sheet },
    back: { left: 2 + 2 * sheet, right: pages - 1 - 2 * sheet },
  }));
}
