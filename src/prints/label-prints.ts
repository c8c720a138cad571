/**
 * The label sheets of some labels: full labels in every size that holds one of them, and always in the largest, so
 * that a label which fits nowhere is told; allergen cards in the smallest size.
 */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { LabelSize } from '../domain/label-settings.ts';
import { type LabelForm, labelFits } from './food-label/label-face.ts';
import { type LabelCopies, labelSheetPrint, setLabels, sizeSlug } from './food-label.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Metrics, Print } from './sheet/surface.ts';

/** Labels to print, whatever the house style. */
export interface LabelsAsk {
  /** Begins the names of the files: '' for the samples, 'R-1042-' for an order. */
  prefix: string;
  labels: readonly LabelCopies[];
  sizes: readonly LabelSize[];
  papers: readonly PaperName[];
  lang: Locale;
}

export interface LabelPrintsAsk extends LabelsAsk {
  style: HouseStyle;
  metrics: Metrics;
}

const areaOf = ({ widthMm, heightMm }: LabelSize): number => widthMm * heightMm;
const bySize = (sizes: readonly LabelSize[]): LabelSize[] => [...sizes].sort((a, b) => areaOf(b) - areaOf(a));

/** Prints below labels/, every paper in turn. */
export function labelPrints({
  prefix,
  labels,
  sizes,
  style,
  metrics,
  papers,
  lang,
}: LabelPrintsAsk): Print[] {
  const context = sheetContext(style, metrics);
  const sorted = bySize(sizes);
  const full = sorted.filter(
    (size, at) => at === 0 || labels.some(({ view }) => labelFits({ view, form: 'full', size, context })),
  );
  const card = sorted.at(-1);
  const common = { labels, style, metrics, lang };
  const sheets = (form: LabelForm, name: string, size: LabelSize): Print[] => {
    const path = `labels/${prefix}${name}-${sizeSlug(size)}`;
    const faces = setLabels({ ...common, form, size });
    return papers.flatMap((paper) => labelSheetPrint({ ...common, form, size, paper, path }, faces) ?? []);
  };
  return [
    ...full.flatMap((size) => sheets('full', 'full', size)),
    ...(card === undefined ? [] : sheets('card', 'allergen-cards', card)),
  ];
}
