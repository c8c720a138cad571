/** A tin's patterns at true size: its lining papers, the strip for levelling its cake, and the cake's board. */
import type { LiningPiece } from '../compute/lining/index.ts';
import { type FinishingSettings, USUAL_FINISHING } from '../domain/finishing.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import type { Recipe } from '../domain/recipe.ts';
import type { Tin } from '../domain/tin.ts';
import { type TemplateWords, templateWordsFor } from '../wording/lining-template/index.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { tinOtherSize, tinSize } from '../wording/tin-size.ts';
import { boardPiece } from './board-circle.ts';
import type { Caution } from './figure.ts';
import { layerStrips } from './layer-strip.ts';
import { LINING } from './lining-allowances.ts';
import type { LiningTemplateView, TemplatePiece } from './lining-template.types.ts';
import { liningTemplatePieces, mmText } from './lining-template-pieces.ts';
import { pictureOfTin } from './picture-of-tin.ts';
import { tinLining } from './tin-lining.ts';

export interface LiningTemplateInput {
  kitchen: Kitchen;
  recipes: readonly Recipe[];
  /** The usual settings when the kitchen has none of its own. */
  finishing?: FinishingSettings;
}

function paperNotes(piece: LiningPiece, { notes }: TemplateWords): string[] {
  const clearance = mmText(LINING.clearanceMm);
  switch (piece.kind) {
    case 'base':
      return [notes.base(clearance), ...(piece.method === 'followed' ? [notes.followed] : [])];
    case 'strip':
      return [notes.strip(mmText(LINING.overlapMm), mmText(LINING.collarMm))];
    case 'sector':
      return [notes.sector];
    case 'panel':
      return [notes.panel];
    case 'trace-the-base':
      return [notes.trace(clearance)];
    case 'grease-and-flour':
      return [piece.reason === 'curved-wall' ? notes.curvedWall : notes.unknownShape];
  }
}

function notesFor(
  tin: Tin,
  papers: readonly LiningPiece[],
  pieces: readonly TemplatePiece[],
  finishing: FinishingSettings,
  words: TemplateWords,
): string[] {
  const { notes } = words;
  const has = (group: TemplatePiece['group']) => pieces.some((piece) => piece.group === group);
  const all = [
    ...papers.flatMap((piece) => paperNotes(piece, words)),
    ...(has('levelling') ? [notes.levels(mmText(finishing.cakeHeightMm), finishing.layers)] : []),
    ...(has('board') ? [notes.board(mmText(finishing.undercoatMm))] : []),
    ...(tin.note ? [notes.ownNote(tin.note.replace(/\.$/, ''))] : []),
  ];
  return [...new Set(all)];
}

function cautionsFor(
  papers: readonly LiningPiece[],
  pieces: readonly TemplatePiece[],
  { cautions }: TemplateWords,
): Caution[] {
  const has = (group: TemplatePiece['group']) => pieces.some((piece) => piece.group === group);
  const codes: (keyof TemplateWords['cautions'])[] = [
    ...(pieces.length > 0 ? (['pattern-not-food-safe'] as const) : []),
    ...(papers.some(({ kind }) => kind === 'strip' || kind === 'sector' || kind === 'panel')
      ? (['paper-near-element'] as const)
      : []),
    ...(papers.some(({ kind }) => kind === 'grease-and-flour') ? (['flour-allergen'] as const) : []),
    ...(has('levelling') ? (['levels-touch-cake'] as const) : []),
    ...(has('board') ? (['board-not-food-safe'] as const) : []),
  ];
  return codes.map((code) => ({ code, text: cautions[code] }));
}

/** The template of one tin. */
export function liningTemplateView(tin: Tin, input: LiningTemplateInput): LiningTemplateView {
  const { kitchen, recipes, finishing = USUAL_FINISHING } = input;
  const words = wordsFor(kitchen.locale);
  const template = templateWordsFor(kitchen.locale);
  const papers = tinLining(tin);
  const board = boardPiece(tin, finishing, template);
  const pieces = [
    ...liningTemplatePieces(tin, template),
    ...layerStrips(tin, recipes, finishing, template),
    ...(board ? [board] : []),
  ];
  const size = tinSize(tin, words);
  return {
    id: tin.id,
    kitchenName: kitchen.name,
    edition: kitchen.edition,
    tinName: tin.name,
    title: template.title(tin.name),
    summary: template.summary(size),
    sizeText: size,
    otherSizeText: tinOtherSize(tin, words),
    picture: pictureOfTin(tin, words),
    pieces,
    notes: notesFor(tin, papers, pieces, finishing, template),
    cautions: cautionsFor(papers, pieces, template),
  };
}

/** One template for every tin on the shelf, in the kitchen's order. */
export function liningTemplates(input: LiningTemplateInput): LiningTemplateView[] {
  return input.kitchen.tins.filter((tin) => tin.owned > 0).map((tin) => liningTemplateView(tin, input));
}
