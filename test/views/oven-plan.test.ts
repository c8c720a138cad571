/** What an oven plan draws: every tin where the plan has put it, with its air, numbered as its list numbers it. */
import { describe, expect, it } from 'vitest';
import { outlineBounds } from '../../src/compute/outline/index.ts';
import { standingOutline } from '../../src/views/timetable/oven-plan.ts';
import { tin } from '../compute/timeline/sample-week.ts';
import { sampleTimetable } from '../samples/timetable.ts';

const view = sampleTimetable();

describe('the oven plan', () => {
  it('stands every tin where the plan has put it, turned where it is turned', () => {
    const place = {
      shelf: 0,
      orderId: '',
      tierId: '',
      bake: { firstLook: 0, expected: 0, by: 0 },
      firstLook: 0,
      expected: 0,
      by: 0,
    };
    const turned = standingOutline({ ...place, tin: tin('loaf-9-5'), turned: true, xMm: 100, yMm: 150 });
    const { minX, maxX, minY, maxY } = outlineBounds(turned ?? { rings: [] });
    expect([minX, maxX, minY, maxY].map((mm) => Math.round(mm * 10) / 10)).toEqual([
      36.5, 163.5, 35.7, 264.3,
    ]);
  });

  it('draws every tin with its air to the walls', () => {
    const shelves = view.ovenPlan.loads.flatMap((load) => load.shelves);
    for (const { outline } of shelves.flatMap(({ tins }) => tins)) {
      const { minX, maxX, minY, maxY } = outlineBounds(outline ?? { rings: [] });
      for (const air of [minX, 440 - maxX, minY, 360 - maxY]) expect(air).toBeGreaterThanOrEqual(19.99);
    }
  });

  it('gives each tin the number it has in the list', () => {
    for (const { shelves, looks } of view.ovenPlan.loads) {
      const drawn = shelves.flatMap(({ tins }) => tins.map(({ number, name }) => `${number} ${name}`)).sort();
      expect(drawn).toEqual(looks.map(({ number, name }) => `${number} ${name}`).sort());
    }
  });
});
