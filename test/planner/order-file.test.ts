/** A plan as an order file: read back as the tiers that stood on the plan, whatever its name is. */
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import { PLACE_KINDS } from '../../src/domain/order.ts';
import { readOrder } from '../../src/planner/kitchen-reader.ts';
import { orderFile } from '../../src/planner/make-order.ts';
import { detailsFrom, NO_DETAILS, orderId } from '../../src/planner/order-file.ts';
import { EMPTY_PLAN } from '../../src/planner/plan-state.ts';
import { plannerContent } from '../../src/views/planner-content.ts';
import { demoContent } from '../samples/demo.ts';

let demo: Content;

beforeAll(async () => {
  const content = await demoContent();
  demo = content;
});

const DETAILS = { ...NO_DETAILS, title: 'Two cakes', reference: 'R-3001', at: '2026-11-28T14:00' };

describe('an order file', () => {
  it('says of every plan its tins, counts, flavours and finishes, and keeps its name as written', () => {
    const tin = fc.constantFrom('round-6', 'square-8', 'loaf-9-5', 'round 7in x 3in', 'petal6 9in x 3in');
    const finish = fc.constantFrom(
      'raspberry-jam--filling',
      'vanilla-buttercream--coating',
      'vanilla-buttercream--dam',
      'sugarpaste--rolled',
    );
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.record({ tin, count: fc.integer({ min: 1, max: 4 }) }), {
          minLength: 1,
          maxLength: 3,
          selector: (one) => one.tin,
        }),
        fc.uniqueArray(finish, { maxLength: 3 }),
        fc.constantFrom<string[]>([], ['orange']),
        fc.constantFrom(...PLACE_KINDS),
        fc.string({ minLength: 1, maxLength: 40 }).filter((text) => text.trim() !== ''),
        (tins, finishes, flavourIds, place, title) => {
          const state = { ...EMPTY_PLAN, recipeId: 'vanilla-equal-weights', tins, finishes, flavourIds };
          const file = orderFile(state, plannerContent(demo), { ...DETAILS, place, title });
          if (!file.ok) throw new Error(JSON.stringify(file.problems));
          const { id, text, content } = file.value;
          const read = readOrder(text, id, content, demo.work);
          if (!read.ok) throw new Error(`${JSON.stringify(read.problems)}\n${text}`);
          const { order, week } = read.value;
          expect(order).toMatchObject({ id, title: title.trim(), reference: 'R-3001' });
          expect(order.handOver).toMatchObject({ localTime: '2026-11-28T14:00', place });
          expect(week.id).toBe('2026-W48');
          expect(order.tiers.map(({ tinId, count }) => ({ tin: tinId, count }))).toEqual(
            tins.map((one) => ({ ...one, tin: one.tin.replaceAll(' ', '-') })),
          );
          const asked = finishes.filter((one) => !one.endsWith('--dam'));
          for (const tier of order.tiers) {
            expect(tier.flavourIds).toEqual(flavourIds);
            expect(tier.finishes.map(({ finishId, use }) => `${finishId}--${use}`)).toEqual(asked);
          }
        },
      ),
      { numRuns: 40, seed: 3 },
    );
  });

  it('carries notes to the order as they were written, and none where none were', () => {
    const state = { ...EMPTY_PLAN, tins: [{ tin: 'round-6', count: 1 }] };
    const notesOf = (notes: string): string | undefined => {
      const file = orderFile(state, plannerContent(demo), { ...DETAILS, notes });
      if (!file.ok) throw new Error('no file');
      const { id, text, content } = file.value;
      const read = readOrder(text, id, content, demo.work);
      if (!read.ok) throw new Error(JSON.stringify(read.problems));
      return read.value.order.notes;
    };
    const told = 'Candles: “six”, # in blue\nRing at the back door: twice';
    expect(notesOf(`  ${told}\n`)).toBe(told);
    expect(notesOf(' \n')).toBe('');
  });

  it('is refused with the build’s own words where something is missing', () => {
    const state = { ...EMPTY_PLAN, tins: [{ tin: 'round-6', count: 1 }] };
    const file = orderFile(state, plannerContent(demo), { ...DETAILS, reference: '', at: '' });
    if (!file.ok) throw new Error('no file');
    const { id, text, content } = file.value;
    const read = readOrder(text, id, content, demo.work);
    const codes = read.ok ? [] : read.problems.map(({ code }) => code);
    expect(codes.length).toBeGreaterThanOrEqual(2);
  });

  it('is named by its title, and details take only what fits', () => {
    expect(orderId({ ...DETAILS, title: 'Two tiers: “Ünder” & over' })).toBe('two-tiers-under-over');
    expect(orderId({ ...DETAILS, title: '…' })).toBe('plan');
    expect(detailsFrom({ title: 3, place: 'the moon', stacked: 'yes', at: '2026-11-28T14:00' })).toEqual({
      ...NO_DETAILS,
      at: '2026-11-28T14:00',
    });
    expect(detailsFrom(null)).toEqual(NO_DETAILS);
  });
});
