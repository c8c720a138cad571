/** The foot of an order sheet: what must be told at the hand-over, and what is signed. */
import { TOO_LATE } from '../../views/age-warnings.ts';
import type { OrderView } from '../../views/order.types.ts';
import { stackedMm } from '../recipe-card/fitting.ts';
import { beside, caution, list, textParagraph } from '../sheet/blocks.ts';
import { paragraph } from '../sheet/lines.ts';
import type { Block } from '../sheet/strip.ts';
import type { Sheet } from './bowl-blocks.ts';
import { writeLine } from './write-line.ts';

/**
 * How to keep it and how long, as the labels say it: once where all cakes keep alike; else each date after the cakes
 * it belongs to, one a line.
 */
function keepingTexts({ keeping }: OrderView): string[] {
  const foods = new Map<string, Set<string>>();
  for (const { foodName, dateText, storageText } of keeping) {
    if (dateText === null || storageText === null) continue;
    const text = `${dateText}. ${storageText}`;
    foods.set(text, (foods.get(text) ?? new Set()).add(foodName));
  }
  if (foods.size < 2) return [...foods.keys()];
  return [...foods].map(([text, names]) => `${[...names].join('; ')}. ${text}`);
}

/** The first of those that take the least height. */
const shortest =
  (...variants: readonly Block[]): Block =>
  (widthMm, context) => {
    const set = variants.map((block) => block(widthMm, context));
    return set.reduce((least, one) => (stackedMm(one) < stackedMm(least) - 0.5 ? one : least));
  };

/** Allergens and cautions, how it keeps, and lines to sign; `isEarly` tells cautions that stand with earlier work. */
export function handOverBlocks(
  view: OrderView,
  { words, look }: Sheet,
  cautionWord: string,
  isEarly: (code: string) => boolean,
): Block[] {
  const { allergens } = view;
  const told = [allergens.unknown, allergens.mayContain, allergens.notFree].flatMap((text) => text ?? []);
  const late = view.cautions.filter(({ code }) => !isEarly(code));
  // The bowls of a mix that is too large for one are on this sheet, a list each.
  const warnings = view.warnings.filter(({ code }) => code !== 'several-loads' && !TOO_LATE.includes(code));
  const cautions = [
    caution(words.allergens.title, [allergens.sentence, ...told].join(' '), look.body),
    ...(late.length === 0 ? [] : [caution(cautionWord, late.map(({ text }) => text).join(' '), look.body)]),
    ...(warnings.length === 0
      ? []
      : [
          list(
            'warnings',
            warnings.map(({ message }) => message),
            look.body,
          ),
        ]),
  ];
  const asked = textParagraph('ask', paragraph(allergens.ask, look.body), look.gapMm / 2);
  const keeping = keepingTexts(view).map((text, at) =>
    textParagraph(`keeps-${at}`, paragraph(text, look.body), 1),
  );
  const lines = view.signLines.map((line) => writeLine(line, look.body, look.writeMm));
  return [
    shortest(
      beside(cautions, [asked, ...keeping, ...lines]),
      beside([...cautions, asked], [...keeping, ...lines]),
      beside([...cautions, asked, ...keeping], lines),
    ),
  ];
}
