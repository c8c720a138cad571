/** The faces of a recipe's cards, front and back in turn: weights first, then the method, flowing to further cards. */
import type { RecipeCardView } from '../../views/recipe-card.types.ts';
import { formatDate } from '../../wording/date.ts';
import type { RecipeCardWords } from '../../wording/recipe-card/index.ts';
import { heading, textParagraph } from '../sheet/blocks.ts';
import { flow, type Section } from '../sheet/flow.ts';
import { paragraph, type Span } from '../sheet/lines.ts';
import { cautionBlock, leadInBlock, type MethodLook, methodBlocks } from '../sheet/method-blocks.ts';
import { hairline, rectangle } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block } from '../sheet/strip.ts';
import type { Surface } from '../sheet/surface.ts';
import { table } from '../sheet/table/table.ts';
import { baselineInLeadingMm } from '../sheet/text-block.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';
import { BLEED_MM, type CardForm } from './card-size.ts';
import { ovenTable, tinsOnCard, weightsTable } from './weights-table.ts';

export interface CardParts {
  view: RecipeCardView;
  form: CardForm;
  words: RecipeCardWords;
  context: SheetContext;
}

/** Drawn with the corner of the trimmed card at (x, y); ink runs over the edge by the bleed. */
export interface CardFace {
  draw(surface: Surface, xMm: number, yMm: number): void;
}

const BAND_MM = 2.2;
const HEAD_MM = 4.6;
const FOOT_MM = 4.6;
const NOTE_LINE_MM = 8;

const frameOf = ({ widthMm, heightMm, marginMm }: CardForm) => ({
  widthMm: widthMm - 2 * marginMm,
  heightMm: heightMm - 2 * marginMm - HEAD_MM - FOOT_MM,
});

const lookOf = ({ type }: CardForm): MethodLook => ({
  heading: type.heading,
  body: type.body,
  gapMm: type.body.sizePt * 0.14,
  headingGapMm: type.body.sizePt * 0.26,
  level: 3,
});

/** Lying cards have width to spare and little height. */
const isLow = ({ widthMm, heightMm }: CardForm): boolean => widthMm > heightMm;

const inOneParagraph = (told: [string, string, string][], type: TypeStyle): Block =>
  textParagraph(
    'facts',
    {
      spans: told.flatMap(([, label, text], index): Span[] => [
        { text: index === 0 ? '' : ' · ', colour: 'quietInk' },
        { text: `${label} `, font: 'textBold' },
        { text },
      ]),
      type,
    },
    1.2,
  );

function facts({ view, words, form }: CardParts): Block[] {
  const { body } = form.type;
  const fact = (key: string, label: string, text: string): Block => {
    const spans: Span[] = [{ text: `${label} `, font: 'textBold' }, { text }];
    return textParagraph(key, { spans, type: body }, key === 'oven' ? 1.2 : 0.2);
  };
  const told: [string, string, string][] = [
    ['oven', words.oven, view.ovenText],
    ['height', words.finishedHeight, view.heightText],
    ...(view.eggSizeText === null
      ? []
      : [['eggs', words.eggs, view.eggSizeText] as [string, string, string]]),
  ];
  if (isLow(form)) return [inOneParagraph(told, body)];
  return told.map(([key, label, text]) => fact(key, label, text));
}

const isAllergen = (code: string): boolean => code.startsWith('allergens') || code === 'made-without';

function frontSection(parts: CardParts): Section {
  const { view, words, form, context } = parts;
  const { type } = form;
  const warnings = [...new Set(tableTins(parts).flatMap(({ warnings }) => warnings))];
  const cautions = view.cautions.filter(({ code }) => isAllergen(code));
  return {
    key: 'front',
    blocks: [
      heading(view.title, { level: 1, type: type.title, bookmark: view.title }),
      textParagraph('summary', paragraph(view.summary, type.summary), 0),
      ...facts(parts),
      table(weightsTable(parts, frameOf(form).widthMm, context)),
      ...warnings.map((text, index) => cautionBlock(`warning ${index}`, words.check, text, lookOf(form))),
      ...cautions.map(({ code, text }) => cautionBlock(code, words.caution, text, lookOf(form))),
    ],
  };
}

function tableTins({ view, form, words, context }: CardParts) {
  const shown = weightsTable({ view, form, words }, frameOf(form).widthMm, context).columns.length - 1;
  return tinsOnCard(view, shown);
}

function backSection(parts: CardParts): Section {
  const { view, words, form } = parts;
  const look = lookOf(form);
  const oven = ovenTable(tableTins(parts), parts);
  const cautions = view.cautions.filter(({ code }) => !isAllergen(code));
  return {
    key: 'back',
    blocks: [
      heading(words.method, { level: 2, type: form.type.heading, bookmark: words.method }),
      ...methodBlocks('method', view.method, look),
      ...(oven === null ? [] : [table(oven)]),
      leadInBlock('ready', words.ready, view.readyText, { ...look, gapMm: look.headingGapMm }),
      ...cautions.map(({ code, text }) => cautionBlock(code, words.caution, text, look)),
    ],
  };
}

/** Paper to write on where the last card would have an empty back. */
const notesFace = ({ words, form, context }: CardParts): CardFace => {
  const { widthMm, heightMm } = frameOf(form);
  const title = heading(words.notes, { level: 2, type: form.type.heading });
  return {
    draw(surface, xMm, yMm) {
      for (const strip of title(widthMm, context))
        surface.within('Sect', { key: 'notes' }, () => strip.draw(surface, xMm, yMm));
      surface.artifact(() => {
        for (let y = 2 * NOTE_LINE_MM; y < heightMm; y += NOTE_LINE_MM)
          hairline(surface, context, xMm, yMm + y, widthMm);
      });
    },
  };
};

function drawEnd(
  surface: Surface,
  { form, context }: CardParts,
  text: string,
  place: { xMm: number; yMm: number; share: 0 | 1; strong: boolean },
): void {
  const { small } = form.type;
  const font = place.strong ? 'textBold' : small.font;
  const width = context.metrics.widthMm(text, font, small.sizePt);
  const colour = place.strong ? context.inks.accent : context.inks[small.colour];
  const xMm = place.xMm - width * place.share;
  surface.text({ text, xMm, yMm: place.yMm, font, sizePt: small.sizePt, colour });
}

function drawFurniture(
  surface: Surface,
  parts: CardParts,
  at: { xMm: number; yMm: number },
  face: number,
  cards: number,
): void {
  const { view, form, words, context } = parts;
  const { marginMm, widthMm, heightMm } = form;
  const band = rectangle(at.xMm - BLEED_MM, at.yMm - BLEED_MM, widthMm + 2 * BLEED_MM, BLEED_MM + BAND_MM);
  surface.path(band, { fill: context.inks.accent });
  const left = at.xMm + marginMm;
  const right = at.xMm + widthMm - marginMm;
  const head = at.yMm + marginMm + baselineInLeadingMm(form.type.small, context) - 0.6;
  const foot =
    at.yMm + heightMm - marginMm - context.metrics.descentMm(form.type.small.font, form.type.small.sizePt);
  drawEnd(surface, parts, view.kitchenName, { xMm: left, yMm: head, share: 0, strong: true });
  if (face > 0)
    drawEnd(surface, parts, words.continued(view.title), { xMm: right, yMm: head, share: 1, strong: false });
  drawEnd(surface, parts, words.edition(formatDate(view.edition)), {
    xMm: left,
    yMm: foot,
    share: 0,
    strong: false,
  });
  const number = words.card(Math.floor(face / 2) + 1, cards);
  drawEnd(surface, parts, number, { xMm: right, yMm: foot, share: 1, strong: false });
}

/** The method begins on the back of a front that holds all weights, else straight after them. */
function flowedFaces(parts: CardParts): CardFace[] {
  const { form, context } = parts;
  const front = frontSection(parts);
  const back = backSection(parts);
  const inFront = flow([front], frameOf(form), context);
  return flow([front, { ...back, startsPage: inFront.length === 1 }], frameOf(form), context);
}

/** Always an even number of faces: card k has faces 2k and 2k + 1. */
export function cardFaces(parts: CardParts): CardFace[] {
  const { form } = parts;
  const flowed = flowedFaces(parts);
  const faces = flowed.length % 2 === 0 ? flowed : [...flowed, notesFace(parts)];
  return faces.map((face, index) => ({
    draw(surface, xMm, yMm) {
      surface.artifact(() => drawFurniture(surface, parts, { xMm, yMm }, index, faces.length / 2));
      face.draw(surface, xMm + form.marginMm, yMm + form.marginMm + HEAD_MM);
    },
  }));
}
