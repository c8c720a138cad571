/**
 * How long may it be kept, and where? As long as the part that keeps the shortest, sponge or finish, and never
 * longer than the kitchen promises. Food that spoils fast gets a date to use it by: Regulation (EU) No 1169/2011
 * Article 24 (from memory). Keeping times are common practice, no source; 8 °C or below for chilled food: Food
 * Safety and Hygiene (England) Regulations 2013 Schedule 4 (from memory).
 */

import type { Finish } from '../../domain/finish.ts';
import type { StorageKind } from '../../domain/label-settings.ts';
import type { Durability } from './label.types.ts';
import type { LabelInput } from './label-input.ts';
import { usedFinishes } from './used-finishes.ts';

const DAY_MS = 86_400_000;

/** The day `days` after an ISO date; both are days of the calendar, without clock or zone. */
export function daysAfter(isoDate: string, days: number): string {
  return new Date(Date.parse(`${isoDate}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);
}

/** Syrup that has soaked in neither needs the fridge nor shortens the keeping. */
const counts = ({ kind }: Finish): boolean => kind !== 'syrup';

const finishesOf = ({ finishes }: LabelInput): Finish[] => usedFinishes(finishes).filter(counts);

const underSheet = (finishes: readonly Finish[], input: LabelInput): boolean =>
  finishes.some(({ chilled, use }) => chilled && use.rolled === undefined) &&
  input.finishes.some(({ use }) => use === 'rolled');

/** Chilled filling under a rolled sheet: out of the fridge and eaten on the day. */
const SAME_DAY: Limit = [null, 0];

type Limit = [name: string | null, days: number];

/** What keeps the shortest decides. */
export function durabilityOf(input: LabelInput): Durability {
  const finishes = finishesOf(input);
  const limits: Limit[] = [
    ...input.sponges.map(({ name, keepsDays }): Limit => [name, keepsDays]),
    ...finishes.map(({ name, keepsDays }): Limit => [name, keepsDays]),
    ...(underSheet(finishes, input) ? [SAME_DAY] : []),
    ...(input.settings.durabilityDays === undefined ? [] : [[null, input.settings.durabilityDays] as Limit]),
  ];
  const [decidedBy, keepsDays] = limits.reduce((least, one) => (one[1] < least[1] ? one : least));
  const perishable = finishes.some(({ kind, chilled }) => kind === 'cream' || chilled);
  const { madeOn } = input.facts;
  return {
    keepsDays,
    decidedBy,
    kind: perishable ? 'use by' : 'best before',
    date: madeOn === null ? null : daysAfter(madeOn, keepsDays),
  };
}

/** Where it is kept, from filling and coating together. */
export function storageOf(input: LabelInput): StorageKind {
  const finishes = finishesOf(input);
  const rolled = input.finishes.some(({ use }) => use === 'rolled');
  if (underSheet(finishes, input)) return 'dry-same-day';
  if (rolled) return 'dry-under-sheet';
  if (finishes.some(({ kind }) => kind === 'cream')) return 'chilled';
  if (finishes.some(({ chilled }) => chilled)) return 'chilled-and-tempered';
  return finishes.some(({ kind }) => kind === 'buttercream' || kind === 'ganache') ? 'cool' : 'box';
}
