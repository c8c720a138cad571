/** A surface that remembers what is drawn: boxes of words (turned ones too), strokes, figures. */
import type { Point } from '../../../../src/domain/outline.ts';
import type { Metrics, Paint, PrintPage, Surface, TextRun } from '../../../../src/prints/sheet/surface.ts';
import { curvesOf, spotsAlong } from '../../../../src/prints/templates/curves.ts';

export interface WordsBox {
  text: string;
  sizePt: number;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

export interface RecordedSheet {
  words: WordsBox[];
  strokes: { points: Point[]; paint: Paint }[];
  alts: string[];
  bookmarks: string[];
}

/** Ink of a line: cap height above the baseline and the descender below it. */
function boxOf(run: TextRun, metrics: Metrics): WordsBox {
  const { text, sizePt, font, xMm, yMm } = run;
  const long = metrics.widthMm(text.trimEnd(), font, sizePt, run.tabular);
  const up = metrics.capHeightMm(font, sizePt);
  const down = /[gjpqy,;()]/.test(text) ? 0.2 * sizePt * (25.4 / 72) : 0;
  if (run.turnDeg === 270)
    return { text, sizePt, left: xMm - down, right: xMm + up, top: yMm, bottom: yMm + long };
  if (run.turnDeg) throw new Error(`words turned by ${run.turnDeg}`);
  return { text, sizePt, left: xMm, right: xMm + long, top: yMm - up, bottom: yMm + down };
}

export function recordSheet(page: PrintPage, metrics: Metrics): RecordedSheet {
  const sheet: RecordedSheet = { words: [], strokes: [], alts: [], bookmarks: [] };
  const surface: Surface = {
    text: (run) => sheet.words.push(boxOf(run, metrics)),
    path: (steps, paint) => {
      const points = curvesOf(steps).flatMap((curve) => [curve.from, ...spotsAlong(curve, 0.5)]);
      sheet.strokes.push({ points, paint });
    },
    within: (_, { alt }, body) => {
      if (alt !== undefined) sheet.alts.push(alt);
      body();
    },
    artifact: (body) => body(),
    clip: (_box, body) => body(),
    link: (_box, _target, _description, body) => body(),
    anchor: () => undefined,
    bookmark: (title) => sheet.bookmarks.push(title),
  };
  page.draw(surface, { xMm: 0, yMm: 0 });
  return sheet;
}
