/** The running words of a card: facts, cautions, how long in the oven, when it is ready. */
import type { MethodItem } from '../../views/method-text.types.ts';
import type { CardTin } from '../../views/recipe-card.types.ts';
import { heading, textParagraph } from '../sheet/blocks.ts';
import { paragraph, type Span } from '../sheet/lines.ts';
import { cautionBlock, leadInBlock, methodBlocks } from '../sheet/method-blocks.ts';
import type { Block } from '../sheet/strip.ts';
import { type CardParts, lookOf } from './card-parts.ts';

export const titleBlock = ({ view, form }: CardParts): Block =>
  heading(view.title, { level: 1, type: form.type.title, bookmark: view.title, anchor: view.id });

export const summaryBlock = ({ view, form }: CardParts): Block =>
  textParagraph('summary', paragraph(view.summary, form.type.summary), 0.4);

type Fact = [label: string, text: string];

function factsOf({ view, words }: CardParts): Fact[] {
  return [
    [words.oven, view.ovenText],
    [words.finishedHeight, view.heightText],
    ...(view.eggSizeText === null ? [] : [[words.eggs, view.eggSizeText] as Fact]),
  ];
}

/** A line each. */
export function factLines(parts: CardParts): Block[] {
  return factsOf(parts).map(([label, text], index) => {
    const spans: Span[] = [{ text: `${label} `, font: 'textBold' }, { text }];
    return textParagraph(`fact ${index}`, { spans, type: parts.form.type.body }, index === 0 ? 1.2 : 0.2);
  });
}

/** With the tins that a warning concerns, unless it concerns all of them. */
function warningTexts({ view }: CardParts, tins: readonly CardTin[]): string[] {
  const messages = [...new Set(tins.flatMap(({ warnings }) => warnings))];
  return [
    ...view.warnings,
    ...messages.map((message) => {
      const concerned = tins.filter(({ warnings }) => warnings.includes(message));
      const names = concerned.map(({ name }) => name).join(', ');
      return concerned.length === tins.length ? message : `${names}: ${message}`;
    }),
  ];
}

export const warningBlocks = (parts: CardParts, tins: readonly CardTin[]): Block[] =>
  warningTexts(parts, tins).map((text, index) =>
    cautionBlock(`warning ${index}`, parts.words.check, text, lookOf(parts.form)),
  );

export const allergenBlocks = ({ view, form, words }: CardParts): Block[] =>
  view.allergens.map(({ code, text }) => cautionBlock(code, words.caution, text, lookOf(form)));

/** All in one paragraph: each says enough to stand in a row with others. */
export function cautionBlocks({ view, form, words }: CardParts): Block[] {
  const text = view.cautions.map((one) => one.text).join(' ');
  return text === '' ? [] : [cautionBlock('cautions', words.caution, text, lookOf(form))];
}

export const readyBlock = ({ view, form, words }: CardParts): Block =>
  leadInBlock('ready', words.ready, view.readyText, lookOf(form));

/** How sure the times are, and which to heed where the method gives others. */
function basisText({ view, words }: CardParts): string | null {
  if (view.bakeBasisText === null) return null;
  return view.methodTimes ? `${view.bakeBasisText} ${words.earlierLook}` : view.bakeBasisText;
}

export function basisBlocks(parts: CardParts): Block[] {
  const text = basisText(parts);
  return text === null ? [] : [leadInBlock('basis', parts.words.inTheOven, text, lookOf(parts.form))];
}

/** The oven tin by tin, a line each, where the table has no room for it, and how sure the times are. */
export function ovenLines(parts: CardParts, tins: readonly CardTin[]): Block[] {
  const { form, words } = parts;
  const items = tins.flatMap(({ name, bake }): MethodItem[] => {
    if (!bake) return [];
    const { dial, firstLook, expectedBy, core, band } = bake;
    const text = words.inOven(name, dial.text, firstLook.text, expectedBy.text, core, band);
    return [{ kind: 'item', number: null, list: 'oven', spans: [{ text, emphasis: 'none' }] }];
  });
  if (items.length === 0) return [];
  const look = lookOf(form);
  const basis = basisText(parts);
  return [
    heading(words.inTheOven, { level: 3, type: form.type.heading, spaceMm: look.headingGapMm }),
    ...methodBlocks('oven', items, look),
    ...(basis === null ? [] : [textParagraph('basis', paragraph(basis, form.type.body), look.gapMm)]),
  ];
}
