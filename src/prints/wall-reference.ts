/** A wall reference on one paper: as few sheets as hold it, everything as large as they allow. */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale } from '../domain/kitchen.ts';
import type { WallView } from '../views/wall.types.ts';
import { wallWordsFor } from '../wording/wall/index.ts';
import { qrCode } from './qr.ts';
import { flow } from './sheet/flow.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import { shiftedSurface } from './sheet/shifted-surface.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { drawWallFoot, wallFrame } from './wall/wall-frame.ts';
import type { WallLink } from './wall/wall-head.ts';
import { wallLayout } from './wall/wall-layout.ts';
import type { WallPaper } from './wall/wall-paper.ts';
import { plateScale } from './wall/wall-plate.ts';

const SCALE_BAR_MM = 200;

export interface WallOptions {
  /** Address of the site's root; the sheet then carries a code that leads to its page. */
  siteUrl?: string;
}

function linkOf(view: WallView, siteUrl: string | undefined): WallLink | null {
  if (siteUrl === undefined) return null;
  const url = `${siteUrl.replace(/\/*$/, '')}/${view.path}`;
  return { url, code: qrCode(url), text: view.pathText };
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
  const { body, kitchenName, edition } = view;
  const upright = { widthMm: paper.widthMm, heightMm: paper.heightMm };
  const layout = wallLayout(view, upright, words, context, linkOf(view, siteUrl));
  const { size, type, growth } = layout;
  const frame = wallFrame(size, context);
  const pages = flow([{ key: view.id, blocks: layout.blocks }], frame, context);
  const scale = body.form === 'plate' ? plateScale(body, growth) : null;
  const scaleBar = scale === null ? null : { scale, lengthMm: SCALE_BAR_MM, text: words.scale(scale) };
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
