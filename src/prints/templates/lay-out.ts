/** Every piece of a template on its sheets: turned where that saves joints or paper, groups on sheets of their own. */
import type { PaperName } from '../../domain/kitchen.ts';
import type { LiningTemplateView, TemplateGroup, TemplatePiece } from '../../views/lining-template.types.ts';
import type { TemplateLabels } from '../../wording/lining-template/sheet-words.ts';
import { type SetBefore, setBefore } from '../sheet/set-before.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import { cutIntoParts, type LaidPiece, type Part } from './cut-into-parts.ts';
import { PART_GAP_MM, packSheets } from './pack-sheets.ts';
import { BESIDE_GAP_MM, type PartDrawing, partDrawing } from './part-drawing.ts';
import { type TemplateFrame, templateFrame } from './template-sheet.ts';

/** A part on a sheet, with its words below it where they found no room on it. */
export interface SheetItem {
  laid: LaidPiece;
  part: Part;
  drawing: PartDrawing;
  widthMm: number;
  heightMm: number;
}

export interface PlacedItem {
  item: SheetItem;
  /** Top left corner on the sheet. */
  xMm: number;
  yMm: number;
}

export interface PatternSheet {
  group: TemplateGroup;
  items: PlacedItem[];
}

export interface TemplateLayout {
  pieces: LaidPiece[];
  sheets: PatternSheet[];
}

const GROUPS: readonly TemplateGroup[] = ['lining', 'levelling', 'board', 'supports'];
/** A joint costs the baker about as much as this share of a sheet. */
const JOINT_COST = 0.15;

/** Sheets that the parts take, and the trouble of joining them. */
function cost({ parts }: LaidPiece, frame: TemplateFrame): number {
  const sheets = parts.reduce((sum, { window }) => {
    const across = Math.floor((frame.widthMm + PART_GAP_MM) / (window.maxX - window.minX + PART_GAP_MM));
    const down = Math.floor((frame.heightMm + PART_GAP_MM) / (window.maxY - window.minY + PART_GAP_MM));
    return sum + 1 / Math.max(1, across * down);
  }, 0);
  return Math.round((sheets + parts.length * JOINT_COST) * 1e6);
}

function laidPiece(piece: TemplatePiece, frame: TemplateFrame, firstLetter: number): LaidPiece {
  const asIs = cutIntoParts(piece, false, frame, firstLetter);
  if (asIs.parts.length === 1) return asIs;
  const turned = cutIntoParts(piece, true, frame, firstLetter);
  return cost(turned, frame) < cost(asIs, frame) ? turned : asIs;
}

interface Words {
  tinName: string;
  labels: TemplateLabels;
  context: SheetContext;
}

/** More pieces than the tins of a large shelf have; a tin has about four. */
const MOST_DRAWN = 200;
const drawnBefore = new WeakMap<TemplateLabels, SetBefore<PartDrawing>>();

/** Finding room for words takes longest. A piece that fits a sheet whole looks the same on every paper: set once. */
function drawingOf(laid: LaidPiece, part: Part, { tinName, labels, context }: Words): PartDrawing {
  const fresh = () => partDrawing(laid, part, tinName, labels, context);
  if (part.name !== '') return fresh();
  const setOnce = drawnBefore.get(labels) ?? setBefore<PartDrawing>(MOST_DRAWN);
  drawnBefore.set(labels, setOnce);
  return setOnce([laid.piece, laid.turned, part, tinName], context, fresh);
}

function itemsOf(
  laid: LaidPiece,
  tinName: string,
  labels: TemplateLabels,
  context: SheetContext,
): SheetItem[] {
  return laid.parts.map((part) => {
    const drawing = drawingOf(laid, part, { tinName, labels, context });
    const { beside } = drawing;
    if (beside === null) return { laid, part, drawing, widthMm: drawing.widthMm, heightMm: drawing.heightMm };
    const widthMm = Math.max(drawing.widthMm, beside.widthMm);
    return { laid, part, drawing, widthMm, heightMm: drawing.heightMm + BESIDE_GAP_MM + beside.heightMm };
  });
}

/** Pieces, parts and sheets of one tin on one paper. */
export function templateLayout(
  view: Pick<LiningTemplateView, 'pieces' | 'tinName'>,
  paper: PaperName,
  labels: TemplateLabels,
  context: SheetContext,
): TemplateLayout {
  const frame = templateFrame(paper);
  const pieces: LaidPiece[] = [];
  for (const piece of view.pieces) {
    const letters = pieces.reduce((sum, laid) => sum + laid.letters, 0);
    pieces.push(laidPiece(piece, frame, letters));
  }
  const sheets = GROUPS.flatMap((group) => {
    const items = pieces
      .filter(({ piece }) => piece.group === group)
      .flatMap((laid) => itemsOf(laid, view.tinName, labels, context));
    const order = (placed: { item: SheetItem }[]) =>
      Math.min(...placed.map(({ item }) => items.indexOf(item)));
    const packed = packSheets(items, frame).sort((a, b) => order(a) - order(b));
    return packed.map((placed): PatternSheet => {
      const onSheet = placed.map((at) => ({
        item: at.item,
        xMm: at.xMm + frame.xMm,
        yMm: at.yMm + frame.yMm,
      }));
      return { group, items: onSheet };
    });
  });
  return { pieces, sheets };
}
