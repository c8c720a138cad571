/** The code that leads to the derivation of the card's figures, with one word below it. */
import type { RecipeCardView } from '../../views/recipe-card.types.ts';
import type { RecipeCardWords } from '../../wording/recipe-card/index.ts';
import { qrCode } from '../qr.ts';
import { paragraph } from '../sheet/lines.ts';
import { drawPageCode } from '../sheet/page-code.ts';
import type { Block } from '../sheet/strip.ts';
import type { Surface } from '../sheet/surface.ts';
import { drawText, setText } from '../sheet/text-block.ts';
import type { CardParts } from './card-parts.ts';
import { drawDown, stackedMm } from './fitting.ts';

/** Common practice: a module of a third of a millimetre reads well with a phone at arm's length. */
const MODULE_MM = 0.33;

export interface CardCode {
  widthMm: number;
  heightMm: number;
  draw(surface: Surface, xMm: number, yMm: number): void;
}

/** What the code of any card is set from. */
export interface CodeParts extends Pick<CardParts, 'form' | 'context' | 'kept'> {
  view: Pick<RecipeCardView, 'title' | 'workingUrl'>;
  words: Pick<RecipeCardWords, 'working' | 'workingOf'>;
}

/** Null when the site has no address. */
export function cardCode({ view, form, words, context, kept }: CodeParts): CardCode | null {
  const { workingUrl: url, title } = view;
  if (url === null) return null;
  const code = kept.codes.get(url) ?? qrCode(url);
  kept.codes.set(url, code);
  const sideMm = code.modules * MODULE_MM;
  const label = setText([paragraph(words.working, form.type.small)], sideMm, context);
  const heightMm = sideMm + label.heightMm;
  const page = { url, code, text: words.workingOf(title) };
  return {
    widthMm: sideMm,
    heightMm,
    draw(surface, xMm, yMm) {
      const square = { xMm, yMm, widthMm: sideMm, heightMm: sideMm };
      drawPageCode(surface, context, page, { code: square, link: { ...square, heightMm } }, () =>
        drawText(surface, context, label, xMm, yMm + sideMm - 0.6, 'centre'),
      );
    },
  };
}

/** The code where the text runs. */
export const codeBlock =
  (code: CardCode): Block =>
  () => [
    {
      heightMm: code.heightMm,
      spaceMm: 1.5,
      keepWithNext: false,
      draw: (surface, xMm, yMm) => code.draw(surface, xMm, yMm),
    },
  ];

const GAP_BESIDE_MM = 3;

/** Blocks with the code at their right; the whole width is theirs where there is none. */
export const besideCode =
  (parts: CodeParts, blocks: readonly Block[]): Block =>
  (widthMm) => {
    const code = cardCode(parts);
    const textMm = code ? widthMm - code.widthMm - GAP_BESIDE_MM : widthMm;
    const strips = blocks.flatMap((block) => block(textMm, parts.context));
    return [
      {
        heightMm: Math.max(stackedMm(strips), code?.heightMm ?? 0),
        spaceMm: 0,
        keepWithNext: true,
        draw(surface, xMm, yMm) {
          drawDown(strips, surface, xMm, yMm);
          code?.draw(surface, xMm + widthMm - code.widthMm, yMm);
        },
      },
    ];
  };
