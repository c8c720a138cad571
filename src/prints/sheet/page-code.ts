/** The code at the head of a sheet that leads to the page behind it, for whoever stands before the paper with a telephone. */
import { drawQr, type QrCode, qrCode } from '../qr.ts';
import { HEAD_MM, headBaselineMm } from './running-head.ts';
import type { SheetContext } from './sheet-context.ts';
import type { Block } from './strip.ts';
import type { Box, Surface } from './surface.ts';
import { typeScale } from './type-scale.ts';

export interface PageCode {
  url: string;
  code: QrCode;
  /** What the page tells: 'How the figures were worked out'. */
  text: string;
}

/** Null where a kitchen has no site. `siteUrl` with or without a slash at its end; `path` from the site's root. */
export function pageCode(siteUrl: string | undefined, path: string, text: string): PageCode | null {
  if (siteUrl === undefined) return null;
  const url = `${siteUrl.replace(/\/*$/, '')}/${path}`;
  return { url, code: qrCode(url), text };
}

/** The code in its box, and what `label` draws with it, as one link. */
export function drawPageCode(
  surface: Surface,
  context: SheetContext,
  { url, code, text }: PageCode,
  places: { code: Box; link: Box },
  label: () => void,
): void {
  const { xMm, yMm, widthMm: sideMm } = places.code;
  surface.within('P', {}, () =>
    surface.link(places.link, { url }, `${text}: ${url}`, () => {
      surface.within('Figure', { alt: `QR: ${url}`, box: places.code }, () =>
        drawQr(surface, code, { xMm, yMm, sideMm }, context.inks.ink),
      );
      label();
    }),
  );
}

const SIDE_MM = 20;
const GAP_MM = 3;

/**
 * A title with the code at its right, which reaches up beside the running head: the words stand there, and nothing
 * moves down.
 */
export const besideCode =
  (title: Block, code: PageCode | null): Block =>
  (widthMm, context) => {
    if (code === null) return title(widthMm, context);
    const [first, ...rest] = title(widthMm - SIDE_MM - GAP_MM, context);
    if (!first) return rest;
    const { font, sizePt, colour } = typeScale.furniture;
    const { metrics, inks } = context;
    const draw = (surface: Surface, xMm: number, yMm: number): void => {
      first.draw(surface, xMm, yMm);
      const topMm = yMm - HEAD_MM;
      const box = { xMm: xMm + widthMm - SIDE_MM, yMm: topMm, widthMm: SIDE_MM, heightMm: SIDE_MM };
      const textMm = box.xMm - GAP_MM - metrics.widthMm(code.text, font, sizePt);
      const baselineMm = topMm + headBaselineMm(context);
      drawPageCode(surface, context, code, { code: box, link: box }, () =>
        surface.text({ text: code.text, xMm: textMm, yMm: baselineMm, font, sizePt, colour: inks[colour] }),
      );
    };
    return [{ ...first, heightMm: Math.max(first.heightMm, SIDE_MM - HEAD_MM), draw }, ...rest];
  };
