/** A wall reference on one paper: as few sheets as hold it, everything as large as they allow. */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale } from '../domain/kitchen.ts';
import type { WallView } from '../views/wall.types.ts';
import { scaleBarMm } from '../wording/scale-bar.ts';
import { wallWordsFor } from '../wording/wall/index.ts';
import { flow } from './sheet/flow.ts';
import { pageCode } from './sheet/page-code.ts';
import type { ScaleBar } from './sheet/scale-bar.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import { shiftedSurface } from './sheet/shifted-surface.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { drawWallFoot, wallFrame } from './wall/wall-frame.ts';
import { wallLayout } from './wall/wall-layout.ts';
import type { WallPaper } from './wall/wall-paper.ts';

export interface WallOptions {
  /** Address of the site's root; the sheet then carries a code that leads to its page. */
  siteUrl?: string;
}

/** Draws nothing yet: gives the pages for a renderer. */
export function wallReferencePrint(
  view: WallView,
  style: HouseStyle,
  metrics: Metrics,
  paper: WallPaper,
  lang: Locale,
  { siteUrl }: WallOptions = {},
): Print {
  const context = sheetContext(style, metrics);
  const words = wallWordsFor(lang);
  const { kitchenName, edition } = view;
  const upright = { widthMm: paper.widthMm, heightMm: paper.heightMm };
  const { size, type, scale, sheets } = wallLayout(
    { view, words, context, link: pageCode(siteUrl, view.path, view.pathText) },
    upright,
  );
  const frame = wallFrame(size, context);
  const sections = sheets.map((blocks, index) => ({ key: `${view.id}-${index}`, blocks, startsPage: true }));
  const pages = flow(sections, frame, context);
  const bar: ScaleBar = { scale, lengthMm: scaleBarMm(lang, 'long'), text: words.scale(scale) };
  const scaleBar = view.body.form === 'plate' ? bar : null;
  return {
    path: `wall/${view.id}-${paper.id}`,
    title: `${view.title} – ${kitchenName}`,
    lang,
    subject: view.lead,
    pages: pages.map((page, index) => ({
      ...size,
      draw(surface, origin) {
        const sheet = shiftedSurface(surface, origin);
        page.draw(sheet, frame.xMm, frame.yMm);
        const foot = { kitchenName, edition, type, words, sheet: index + 1, sheets: pages.length, scaleBar };
        sheet.artifact(() => drawWallFoot(sheet, size, context, foot));
      },
    })),
  };
}
