/**
 * Sheets of labels to cut out, several to a sheet: full labels, or short allergen cards. A label that cannot be set
 * in its size stands as a caution on the first sheet, with the size it needs. What must be read aloud in order is
 * on the site's page of the same label.
 */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { LabelSize } from '../domain/label-settings.ts';
import type { LabelView } from '../views/label.types.ts';
import { type LabelWords, labelWordsFor } from '../wording/label/index.ts';
import { formatNumber } from '../wording/number.ts';
import { type LabelFace, type LabelForm, labelFace } from './food-label/label-face.ts';
import { columnsIn, labelRows } from './food-label/label-rows.ts';
import { furnitureOf } from './labels/furniture.ts';
import { labelsFor } from './labels/labels.ts';
import { caution, heading } from './sheet/blocks.ts';
import type { Section } from './sheet/flow.ts';
import { portraitSheet } from './sheet/paper.ts';
import { frameOf, sheetPages } from './sheet/sheet.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Block } from './sheet/strip.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { typeScale } from './sheet/type-scale.ts';

export interface LabelCopies {
  view: LabelView;
  /** Fill a sheet for a fair by asking for as many. */
  copies: number;
}

export interface LabelSheetAsk {
  /** Below output/print, without paper and extension: 'labels/full-85x110', 'labels/R-1042'. */
  path: string;
  labels: readonly LabelCopies[];
  form: LabelForm;
  size: LabelSize;
  style: HouseStyle;
  metrics: Metrics;
  paper: PaperName;
  lang: Locale;
}

/** '85x110'. */
export const sizeSlug = ({ widthMm, heightMm }: LabelSize): string =>
  `${formatNumber(widthMm, 1)}x${formatNumber(heightMm, 1)}`;

export interface LabelFaces {
  faces: LabelFace[];
  refusals: string[];
}

/** Every label set in the size; the same on every paper. */
export function setLabels({
  labels,
  form,
  size,
  style,
  metrics,
  lang,
}: Omit<LabelSheetAsk, 'paper' | 'path'>): LabelFaces {
  const context = sheetContext(style, metrics);
  const words = labelWordsFor(lang);
  const faces: LabelFace[] = [];
  const refusals: string[] = [];
  for (const { view, copies } of labels) {
    const face = labelFace({ view, form, size, context, words });
    if (face.ok) faces.push(...Array.from({ length: copies }, () => face.value));
    else refusals.push(...face.problems.map(({ message, hint }) => `${message} ${hint ?? ''}`));
  }
  return { faces, refusals };
}

const sizeText = ({ widthMm, heightMm }: LabelSize): string =>
  `${formatNumber(widthMm, 1)} × ${formatNumber(heightMm, 1)}`;

function headBlocks(
  ask: LabelSheetAsk,
  title: string,
  refusals: readonly string[],
  words: LabelWords,
): Block[] {
  const labels = labelsFor(ask.lang);
  return [
    heading(title, { level: 1, type: typeScale.entry, bookmark: title }),
    caution(labels.caution, `${words.draft} ${words.sheet.note}`),
    ...refusals.map((refusal) => caution(labels.check, refusal)),
  ];
}

/** Null when there is nothing to print. */
export function labelSheetPrint(ask: LabelSheetAsk, faces?: LabelFaces): Print | null {
  const { labels, form, size, style, metrics, paper, lang, path } = ask;
  const [first] = labels;
  if (first === undefined) return null;
  const context = sheetContext(style, metrics);
  const words = labelWordsFor(lang);
  const sheet = portraitSheet(paper);
  const frame = frameOf(sheet, context);
  const fitsPaper = columnsIn(frame.widthMm, size) > 0 && size.heightMm <= frame.heightMm;
  const made = fitsPaper
    ? (faces ?? setLabels(ask))
    : { faces: [], refusals: [words.sheet.tooLarge(sizeText(size), paper)] };
  const title = form === 'card' ? words.sheet.cards(sizeText(size)) : words.sheet.title(sizeText(size));
  const sections: Section[] = [
    { key: 'head', blocks: headBlocks(ask, title, made.refusals, words) },
    ...(made.faces.length === 0 ? [] : [{ key: 'labels', blocks: [labelRows(made.faces, size)] }]),
  ];
  const { kitchenName, edition } = first.view;
  const furniture = furnitureOf({ kitchenName, title, edition }, labelsFor(lang));
  return {
    path: `${path}-${paper.toLowerCase()}`,
    title: `${title} – ${kitchenName}`,
    lang,
    subject: words.sheet.subject,
    pages: sheetPages(sections, sheet, context, furniture),
  };
}
