/** How long the cakes of an order keep and where, as their labels say it; and why one has no label. */
import type { LabelLine } from './label.types.ts';
import type { OrderLabels } from './label-orders.ts';
import type { KeepingView } from './order.types.ts';

const read = ({ lead, runs }: LabelLine): string =>
  [lead, ...runs.map(({ text }) => text)].filter((part) => part !== '').join(' ');

/** One entry for each label of the order. */
export const orderKeeping = ({ labels }: OrderLabels): KeepingView[] =>
  labels.map(({ id, foodName, view, refusals }) => {
    const date = view?.lines.find((line) => line.id === 'date');
    return {
      id,
      foodName,
      dateText: date === undefined ? null : read(date),
      keepsText: view?.keepsText ?? null,
      storageText: view?.storageText ?? null,
      refusals: refusals.map(({ text, hint }) => `${text} ${hint}`.trim()),
    };
  });
