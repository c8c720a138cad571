/** How many does a cake from this tin serve? Cut in rows, and in rings where it is round. */
import { bestGridCut } from '../../compute/portions/grid-cut.ts';
import { ringCut } from '../../compute/portions/ring-cut.ts';
import { tinOutline } from '../../compute/shapes/index.ts';
import type { Kitchen } from '../../domain/kitchen.ts';
import { type PortionSize, USUAL_PORTIONS } from '../../domain/portion.ts';
import type { Tin } from '../../domain/tin.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { formatLengthValue } from '../../wording/length.ts';
import { listInWords } from '../../wording/list.ts';
import { wordsFor } from '../../wording/locales/index.ts';
import { formatNumber } from '../../wording/number.ts';
import type { Figure } from '../figure.ts';
import { tableRowAnchor } from './anchors.ts';
import type { BookletTable, TableCell } from './booklet.types.ts';
import { figureCell, wordCell } from './cells.ts';

const pieces = (value: number): Figure => ({ value, unit: 'count', text: formatNumber(value, 0) });

const sizeOf = (id: PortionSize['id']): PortionSize => {
  const size = USUAL_PORTIONS.find((one) => one.id === id);
  if (size === undefined) throw new Error(`no portion size ${id}`);
  return size;
};

/** '25 × 51 mm, 1 × 2 in'. */
function sizeText({ shortMm, longMm }: PortionSize): string {
  const mm = `${formatNumber(shortMm, 0)} × ${formatNumber(longMm, 0)} mm`;
  const inches = `${formatLengthValue(shortMm, 'in')} × ${formatLengthValue(longMm, 'in')} in`;
  return `${mm} (${inches})`;
}

function ringsCell({ shape }: Tin, { shortMm, longMm }: PortionSize): TableCell {
  if (shape.kind !== 'round') return wordCell('–');
  return figureCell(pieces(ringCut(shape.acrossMm, longMm, shortMm).total));
}

function rowOf(tin: Tin): BookletTable['rows'] {
  const outline = tinOutline(tin);
  // A half sphere seen from above is a round, but its outer pieces would be crumbs.
  if (outline === null || tin.shape.kind === 'dome') return [];
  const [finger, dessert] = [sizeOf('finger'), sizeOf('dessert')];
  const inRows = ({ shortMm, longMm }: PortionSize): TableCell =>
    figureCell(pieces(bestGridCut(outline, shortMm, longMm).good));
  return [
    {
      id: tin.id,
      cells: [wordCell(tin.name), inRows(finger), inRows(dessert), ringsCell(tin, dessert)],
    },
  ];
}

/** The same tins are cut once, however many booklets hold them. */
const known = new WeakMap<Tin, BookletTable['rows']>();

function cutOf(tin: Tin): BookletTable['rows'] {
  const row = known.get(tin) ?? rowOf(tin);
  known.set(tin, row);
  return row;
}

/** Null when no tin has a plan that can be cut. */
export function portions(
  tins: readonly Tin[],
  locale: Kitchen['locale'],
  words: BookletWords,
): BookletTable | null {
  const own = words.portions;
  const rows = tins.flatMap(cutOf);
  if (rows.length === 0) return null;
  const uncut = tins.filter((tin) => rows.every(({ id }) => id !== tin.id)).map(({ name }) => name);
  const column = (id: string, name: string, unit: string) => ({ id, name, unit, weight: 'key' as const });
  const rings = rows.some(({ cells }) => cells.at(-1)?.figure);
  return {
    id: 'portions',
    title: own.heading,
    lead: own.lead(sizeText(sizeOf('finger')), sizeText(sizeOf('dessert'))),
    columns: [
      { id: 'tin', name: own.tin, unit: '', weight: 'word' },
      column('finger', own.finger, own.rows),
      column('dessert', own.dessert, own.rows),
      ...(rings ? [column('rings', own.dessert, own.rings)] : []),
    ],
    rows: rows.map(({ id, cells }) => ({ id, cells: rings ? cells : cells.slice(0, -1) })),
    anchors: Object.fromEntries(rows.map(({ id }) => [id, tableRowAnchor('portions', id)])),
    notes: [own.note, ...(uncut.length === 0 ? [] : [own.leftOut(listInWords(uncut, wordsFor(locale).and))])],
    cautions: [{ code: 'supports-out', text: own.caution }],
  };
}
