/** Tins of several cups, as the page of the tins lists them: what a cup holds, and what the oven has to take. */
import { volumeMl } from '../compute/shapes/index.ts';
import type { BunTin } from '../domain/bun-tin.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import { formatLength } from '../wording/length.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatNumber } from '../wording/number.ts';
import { formatDuration } from '../wording/timetable/index.ts';
import { tinSize } from '../wording/tin-size.ts';
import { tinWordsFor } from '../wording/tins/index.ts';

export interface BunTinView {
  id: string;
  name: string;
  ownedText: string;
  text: string;
}

function bunTinView(tin: BunTin, { locale }: Kitchen): BunTinView {
  const { id, name, cups, cup, unit, owned, bake } = tin;
  const own = tinWordsFor(locale);
  const size = tinSize({ ...cup, id, name, owned, unit }, wordsFor(locale));
  const outside = `${formatLength(tin.lengthMm, unit)} × ${formatLength(tin.widthMm, unit)}`;
  const minutes =
    bake === undefined ? [] : [own.bunTinBake(formatDuration(bake.firstLookMin), formatDuration(bake.byMin))];
  const holds = `${formatNumber(volumeMl(cup), 0)}\u00a0mL`;
  return {
    ...{ id, name, ownedText: owned > 1 ? `× ${owned}` : '' },
    text: [own.bunTin(cups, size, holds, outside), ...minutes].join(' '),
  };
}

/** Those of a kitchen, in the order written. */
export const bunTinViews = (kitchen: Kitchen): BunTinView[] =>
  (kitchen.bunTins ?? []).map((tin) => bunTinView(tin, kitchen));
