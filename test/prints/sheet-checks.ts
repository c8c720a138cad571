/** What must hold for every printed sheet, told as a list of what is wrong; empty when all is well. */
import type { ReadPage, ReadPdf, ReadText } from '../reading-back/read-pdf.ts';

export interface Margins {
  top: number;
  right: number;
  bottom: number;
  left: number;
}

const MM_PER_PT = 25.4 / 72;
const SLACK_MM = 0.05;

/** The part of a line of text that carries ink, whichever way it reads: about cap height above and a descender below the baseline. */
function inkBox({ xMm, yMm, widthMm, sizePt, along, text }: ReadText) {
  const em = sizePt * MM_PER_PT;
  const trailing = text.length - text.trimEnd().length;
  const long = widthMm - trailing * 0.2 * em;
  const corners = [0, long].flatMap((far) =>
    [-0.22 * em, 0.72 * em].map((up) => ({
      x: xMm + far * along.x + up * along.y,
      y: yMm + far * along.y - up * along.x,
    })),
  );
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

function beyondMargins(page: ReadPage, margins: Margins): string[] {
  return page.texts.flatMap((text) => {
    const box = inkBox(text);
    const inside =
      box.left >= margins.left - SLACK_MM &&
      box.right <= page.widthMm - margins.right + SLACK_MM &&
      box.top >= margins.top - SLACK_MM &&
      box.bottom <= page.heightMm - margins.bottom + SLACK_MM;
    return inside ? [] : [`beyond the margins: '${text.text}' at ${JSON.stringify(box)}`];
  });
}

function overlaps(page: ReadPage): string[] {
  const boxes = page.texts.map((text) => ({ text: text.text, ...inkBox(text) }));
  return boxes.flatMap((a, index) =>
    boxes
      .slice(index + 1)
      .filter(
        (b) =>
          a.left < b.right - SLACK_MM &&
          b.left < a.right - SLACK_MM &&
          a.top < b.bottom - SLACK_MM &&
          b.top < a.bottom - SLACK_MM,
      )
      .map((b) => `'${a.text}' overlaps '${b.text}'`),
  );
}

const tooSmall = (page: ReadPage, leastPt: number): string[] =>
  page.texts
    .filter(({ sizePt }) => sizePt < leastPt - 0.01)
    .map(({ text, sizePt }) => `'${text}' is set in ${sizePt} pt`);

/** Every fault of every page. */
export function sheetFaults(pdf: ReadPdf, margins: Margins, leastPt = 8): string[] {
  return pdf.pages.flatMap((page, index) =>
    [...beyondMargins(page, margins), ...overlaps(page), ...tooSmall(page, leastPt)].map(
      (fault) => `page ${index + 1}: ${fault}`,
    ),
  );
}

/** Painting outside any marked content, in a page's operators. */
export function unmarkedPainting(content: string): string[] {
  let depth = 0;
  return content.split('\n').filter((line) => {
    if (/ B[MD]C$/.test(line)) depth += 1;
    if (line === 'EMC') depth -= 1;
    const paints = /^(f\*?|S|B\*?)$/.test(line) || /T[jJ] ET$/.test(line);
    return (paints && depth !== 1) || depth < 0 || depth > 1;
  });
}
