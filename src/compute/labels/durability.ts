/**
 * How long may it be kept, and where? Each part from the day it was made: the sponge from its baking, a finish from
 * its making, the kitchen's own promise from the day the cake is finished. The part that is over first decides. Food that spoils fast gets a date to use it by: Regulation (EU) No 1169/2011
 * Article 24 (from memory). Keeping times are common practice, no source; 8 °C or below for chilled food: Food
 * Safety and Hygiene (England) Regulations 2013 Schedule 4 (from memory).
 */

import { daysAfter } from '../../domain/calendar.ts';
import type { Finish, FinishKind } from '../../domain/finish.ts';
import type { StorageKind } from '../../domain/label-settings.ts';
import type { Durability } from './label.types.ts';
import type { LabelInput } from './label-input.ts';
import { usedFinishes } from './used-finishes.ts';

/** Softens in a warm room. */
const COOL: readonly FinishKind[] = ['buttercream', 'ganache', 'poured glaze'];

/** Syrup that has soaked in neither needs the fridge nor shortens the keeping. */
const counts = ({ kind }: Finish): boolean => kind !== 'syrup';

const finishesOf = ({ finishes }: LabelInput): Finish[] => usedFinishes(finishes).filter(counts);

const underSheet = (finishes: readonly Finish[], input: LabelInput): boolean =>
  finishes.some(({ chilled, use }) => chilled && use.rolled === undefined) &&
  input.finishes.some(({ use }) => use === 'rolled');

/** How long one part keeps, and from which day; the day is null until it is known. */
interface Limit {
  name: string | null;
  days: number;
  from: string | null;
}

const dateOf = ({ days, from }: Limit): string | null => (from === null ? null : daysAfter(from, days));

/** ISO dates compare as text; a part without a day goes by its days alone. */
function endsBefore(one: Limit, other: Limit): boolean {
  const [end, otherEnd] = [dateOf(one), dateOf(other)];
  return end === null || otherEnd === null ? one.days < other.days : end < otherEnd;
}

function limitsOf(input: LabelInput): Limit[] {
  const finishes = finishesOf(input);
  const { madeOn, bakedOn, finishesMadeOn = {}, handOverOn } = input.facts;
  const { durabilityDays } = input.settings;
  // A part counts from its own day only where the day of the whole is known too.
  const since = (day: string | undefined): string | null => (madeOn === null ? null : (day ?? madeOn));
  return [
    ...input.sponges.map(({ name, keepsDays }) => ({ name, days: keepsDays, from: since(bakedOn) })),
    ...finishes.map(({ id, name, keepsDays }) => ({
      name,
      days: keepsDays,
      from: since(finishesMadeOn[id]),
    })),
    // Chilled filling under a rolled sheet: out of the fridge and eaten on the day.
    ...(underSheet(finishes, input) ? [{ name: null, days: 0, from: since(handOverOn) }] : []),
    ...(durabilityDays === undefined ? [] : [{ name: null, days: durabilityDays, from: since(undefined) }]),
  ];
}

/**
 * What is over first decides.
 * @example baked on 24 November keeping 4 days, filled on the 26th with what keeps 3: the sponge decides: 28 November
 */
export function durabilityOf(input: LabelInput): Durability {
  const least = limitsOf(input).reduce((first, one) => (endsBefore(one, first) ? one : first));
  const perishable = finishesOf(input).some(({ kind, chilled }) => kind === 'cream' || chilled);
  return {
    keepsDays: least.days,
    decidedBy: least.name,
    kind: perishable ? 'use by' : 'best before',
    date: dateOf(least),
    countsFrom: least.from,
  };
}

/** Whether the cake would be past its keeping when it changes hands. */
export function isPastKeeping(input: LabelInput): boolean {
  const { date } = durabilityOf(input);
  const { madeOn, handOverOn = madeOn } = input.facts;
  return date !== null && handOverOn !== null && date < handOverOn;
}

/** Where it is kept, from filling and coating together. */
export function storageOf(input: LabelInput): StorageKind {
  const finishes = finishesOf(input);
  const rolled = input.finishes.some(({ use }) => use === 'rolled');
  if (underSheet(finishes, input)) return 'dry-same-day';
  if (rolled) return 'dry-under-sheet';
  if (finishes.some(({ kind }) => kind === 'cream')) return 'chilled';
  if (finishes.some(({ chilled }) => chilled)) return 'chilled-and-tempered';
  return finishes.some(({ kind }) => COOL.includes(kind)) ? 'cool' : 'box';
}
