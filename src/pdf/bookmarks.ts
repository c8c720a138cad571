/** The outline beside the pages. Only the first level is unfolded. */
import type { PdfInternals, PdfOutlineItem } from './pdfkit-internals.ts';

export interface Bookmark {
  title: string;
  level: number;
  pageIndex: number;
  /** Points from the bottom of the page. */
  topPt: number;
}

interface Branch {
  item: PdfOutlineItem;
  level: number;
  descendants: number;
}

/** Writes the bookmarks; a level may go one deeper at a time only, deeper jumps hang below the last one. */
export function writeBookmarks(pdf: PdfInternals, pages: unknown[], bookmarks: Bookmark[]): void {
  const path: Branch[] = [{ item: pdf.outline, level: 0, descendants: 0 }];
  let top = 0;
  for (const bookmark of bookmarks) {
    while (path.length > 1 && (path.at(-1)?.level ?? 0) >= bookmark.level) path.pop();
    const item = path.at(-1)?.item.addItem(bookmark.title, {});
    if (!item) continue;
    // The library's own destination is 'whole page' or a place counted from the wrong edge.
    item.outlineData.Dest = [pages[bookmark.pageIndex], 'XYZ', 0, bookmark.topPt, 0];
    if (path.length === 1) top += 1;
    for (const above of path.slice(1)) {
      above.descendants += 1;
      // The standard asks for the count of a folded item as a negative number; the library leaves it out.
      above.item.outlineData.Count = -above.descendants;
    }
    path.push({ item, level: bookmark.level, descendants: 0 });
  }
  if (top > 0) pdf.outline.outlineData.Count = top;
}
