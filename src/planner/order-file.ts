/**
 * The plan as an order file: what the baker adds to the tins (a name, a code, when and where it is handed over) and
 * the text of an orders/ID.yaml that says the same as the plan. The device reads that very text to print, and the
 * build reads it when it is saved into the content folder, so that both print the same.
 */
import { PLACE_KINDS, type PlaceKind, USES } from '../domain/order.ts';
import type { Tin } from '../domain/tin.ts';
import { pictureOfTin } from '../views/picture-of-tin.ts';
import type { Words } from '../wording/words.ts';
import type { PlanState } from './plan-state.ts';

export interface OrderDetails {
  title: string;
  /** The customer as a code. */
  reference: string;
  /** As the device's own field for a day and a time gives it: `2026-11-28T14:00`. */
  at: string;
  place: PlaceKind;
  /** Portions wanted; empty for as many as there are. */
  wanted: string;
  stacked: boolean;
  /** Whatever is worth keeping; stands on the order sheet. */
  notes: string;
}

export const NO_DETAILS: OrderDetails = {
  title: '',
  reference: '',
  at: '',
  place: 'collected',
  wanted: '',
  stacked: false,
  notes: '',
};

/** Whatever was kept on the device, only what fits is taken. */
export function detailsFrom(kept: unknown): OrderDetails {
  const parts = (typeof kept === 'object' && kept !== null ? kept : {}) as Record<string, unknown>;
  const text = (key: string): string => (typeof parts[key] === 'string' ? parts[key] : '');
  return {
    title: text('title'),
    reference: text('reference'),
    at: text('at'),
    place: PLACE_KINDS.find((place) => place === parts.place) ?? NO_DETAILS.place,
    wanted: text('wanted'),
    stacked: parts.stacked === true,
    notes: text('notes'),
  };
}

/** Ids in files are small letters, digits and hyphens. */
export const idOf = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');

/** The name of the file, and of what is printed from it. */
export const orderId = ({ title }: OrderDetails): string => idOf(title) || 'plan';

/** 'vanilla-buttercream--filling'; the bead that holds a soft filling comes by itself. */
function finishes({ finishes: chosen }: PlanState): string {
  const asks = chosen.flatMap((text) => {
    const at = text.lastIndexOf('--');
    const use = USES.find((one) => one === text.slice(at + 2));
    return at < 1 || use === undefined ? [] : [`{ finish: ${text.slice(0, at)}, use: ${use} }`];
  });
  return asks.length === 0 ? '' : `, finishes: [${asks.join(', ')}]`;
}

interface OrderedTin {
  tin: Tin;
  count: number;
}

/** A stack stands on its widest cake. */
function inOrder(tins: readonly OrderedTin[], { stacked }: OrderDetails, words: Words): OrderedTin[] {
  const width = ({ tin }: OrderedTin): number => pictureOfTin(tin, words).widthMm;
  return stacked ? [...tins].sort((a, b) => width(b) - width(a)) : [...tins];
}

/** The text of the order file; what is missing or wrong in it, its reader says. */
export function orderYaml(
  state: PlanState,
  recipeId: string,
  tins: readonly OrderedTin[],
  details: OrderDetails,
  words: Words,
): string {
  const { title, reference, at, place, wanted, stacked, notes } = details;
  const flavours = state.flavourIds.length === 0 ? '' : `, flavours: [${state.flavourIds.join(', ')}]`;
  const height =
    state.height.trim() === '' ? '' : `, finished_height: ${JSON.stringify(state.height.trim())}`;
  return [
    '# A plan, saved from the planner. Put it in the content folder, in orders/.',
    `title: ${JSON.stringify(title)}`,
    `reference: ${JSON.stringify(reference)}`,
    `hand_over: { at: ${at.replace('T', ' ').slice(0, 16)}, place: ${place} }`,
    ...(wanted.trim() === '' ? [] : [`portions: { wanted: ${Number(wanted)}, size: ${state.size} }`]),
    ...(stacked ? ['arrangement: stacked', 'travels_assembled: yes'] : []),
    'tiers:',
    ...inOrder(tins, details, words).map(
      ({ tin, count }) =>
        `  - { tin: ${idOf(tin.id)}, recipe: ${recipeId}${flavours}, count: ${count}${height}${finishes(state)} }`,
    ),
    ...(notes.trim() === '' ? [] : [`notes: ${JSON.stringify(notes.trim())}`]),
    '',
  ].join('\n');
}
