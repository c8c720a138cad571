/** The imprint: edition, what the figures rest on, who may copy, for whom, and how it is folded. */
import type { BookletView } from '../../views/booklet/booklet.types.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { heading, textParagraph } from '../sheet/blocks.ts';
import { paragraph } from '../sheet/lines.ts';
import { rectangle } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block, Strip } from '../sheet/strip.ts';
import type { Surface } from '../sheet/surface.ts';
import { drawText, setText } from '../sheet/text-block.ts';
import type { PageFrame } from './booklet-form.ts';
import { bookletType } from './booklet-type.ts';

const STAMP_PAD_MM = 5;

/** A frame with the words and the name inside, as a stamp would stand there. */
function stamp(label: string, name: string): Block {
  return (widthMm, context) => {
    const text = setText(
      [paragraph(label, bookletType.quiet), paragraph(name, bookletType.title)],
      widthMm * 0.6,
      context,
    );
    const wide = Math.max(...text.lines.map(({ line }) => line.widthMm)) + 2 * STAMP_PAD_MM;
    const high = text.heightMm + 2 * STAMP_PAD_MM;
    return [
      {
        heightMm: high,
        spaceMm: 0,
        keepWithNext: false,
        draw(surface, xMm, yMm) {
          surface.artifact(() => {
            const stroke = { stroke: context.inks.accent, lineWidthPt: 0.75 };
            surface.path(rectangle(xMm, yMm, wide, high), stroke);
            surface.path(rectangle(xMm + 1, yMm + 1, wide - 2, high - 2), { ...stroke, lineWidthPt: 0.25 });
          });
          surface.within('P', {}, () =>
            drawText(surface, context, text, xMm + STAMP_PAD_MM, yMm + STAMP_PAD_MM),
          );
        },
      },
    ];
  };
}

function blocksOf(view: BookletView, words: BookletWords): Block[] {
  const own = words.imprint;
  const { small, strong } = bookletType;
  const text = (key: string, content: string): Block => textParagraph(key, paragraph(content, small), 2);
  const people = [view.kitchenName, ...(view.baker === null ? [] : [view.baker]), view.place].join(', ');
  return [
    heading(own.heading, { level: 1, type: bookletType.heading, bookmark: own.heading, anchor: 'imprint' }),
    textParagraph('people', paragraph(`${people}.`, strong), 1),
    text('edition', own.edition(words.date(view.edition), view.editionNote)),
    text('figures', own.figures),
    ...(view.licence === null
      ? []
      : [
          textParagraph(
            'licence',
            { spans: [{ text: `${own.licence}. `, font: 'textBold' }, { text: view.licence }], type: small },
            2,
          ),
        ]),
    ...(view.siteUrl === null ? [] : [text('site', own.site(view.siteUrl))]),
    text('folding', own.folding),
  ];
}

function heightOf(strips: readonly Strip[]): number {
  return strips.reduce(
    (sum, { heightMm, spaceMm }, index) => sum + heightMm + (index === 0 ? 0 : spaceMm),
    0,
  );
}

/** Draws the imprint at the foot of the frame, the stamp above it. */
export function drawImprint(
  surface: Surface,
  view: BookletView,
  words: BookletWords,
  frame: PageFrame,
  context: SheetContext,
  xMm: number,
): void {
  const strips = blocksOf(view, words).flatMap((block) => block(frame.widthMm, context));
  let yMm = frame.yMm + frame.heightMm - heightOf(strips);
  surface.within('Sect', { key: 'imprint' }, () => {
    if (view.preparedFor !== null) {
      const [mark] = stamp(words.imprint.preparedFor, view.preparedFor)(frame.widthMm, context);
      mark?.draw(surface, xMm, frame.yMm);
    }
    for (const [index, strip] of strips.entries()) {
      if (index > 0) yMm += strip.spaceMm;
      strip.draw(surface, xMm, yMm);
      yMm += strip.heightMm;
    }
  });
}
