import { beforeAll, describe, expect, it } from 'vitest';
import { orderStack } from '../../src/compute/orders/order-stack.ts';
import type { Tin } from '../../src/domain/tin.ts';
import { type ElevationStroke, stackElevation } from '../../src/views/stack-elevation.ts';
import type { StackView } from '../../src/views/stack-sheet.types.ts';
import { type StackedDemo, stackedDemo } from './support/stacked-order.ts';

let demo: StackedDemo;
let view: StackView;

beforeAll(async () => {
  demo = await stackedDemo();
  view = demo.viewOf(demo.byHand());
});

const values = (figures: ({ value: number } | null)[]): (number | null)[] =>
  figures.map((figure) => figure?.value ?? null);

function tinNamed(id: string): Tin {
  const tin = demo.content.kitchen.tins.find((owned) => owned.id === id);
  if (tin === undefined) throw new Error(`no ${id}`);
  return tin;
}

const squareTin = (sideMm: number): Tin => ({ ...tinNamed('square-8'), shape: { kind: 'square', sideMm } });

describe('three tiers, worked by hand', () => {
  it('stand on a drum of 12 mm with cards of 3 mm between them', () => {
    // 12 + 110 = 122; 122 + 3 = 125, + 100 = 225; 225 + 3 = 228, + 90 = 318.
    expect(values(view.tiers.map(({ foot }) => foot))).toEqual([12, 125, 228]);
    expect(values(view.tiers.map(({ top }) => top))).toEqual([122, 225, 318]);
    expect(view.height.value).toBe(318);
    // 10, 8 and 6 in with 10 mm on either side.
    expect(values(view.tiers.map(({ across }) => across))).toEqual([274, 223.2, 172.4]);
    expect(view.tiers.map(({ standsOnText }) => standsOnText)).toEqual([
      'Drum, 14 in (35.6 cm), 12\u00a0mm thick',
      'Card, 8.79 in (22.3 cm), 3\u00a0mm thick',
      'Card, 6.79 in (17.2 cm), 3\u00a0mm thick',
    ]);
  });

  it('weigh 7,700 g, and carry what stands on them', () => {
    expect(view.weight).toEqual({ value: 7700, unit: 'g', text: '7,700' });
    expect(values(view.tiers.map(({ carries }) => carries))).toEqual([3900, 1400, null]);
  });

  it('have a dowel from the drum to 25 mm below the top', () => {
    // 318 − 12 − 25.
    expect(view.dowel?.value).toBe(281);
  });

  it('are held by four supports each, an inch inside the tier above', () => {
    expect(view.sets.map(({ id }) => id)).toEqual(['tier-1-top', 'tier-2-top']);
    expect(values(view.sets.map(({ length }) => length))).toEqual([110, 100]);
    expect(values(view.sets.map(({ ledge }) => ledge))).toEqual([
      expect.closeTo(25.4, 1),
      expect.closeTo(25.4, 1),
    ]);
    const [bottom, middle] = view.sets;
    // 8 in ÷ 2 − 25 = 76.6 from the middle; 5 in + 10 − 76.6 = 60.4 from the edge.
    expect(bottom?.spots.map((spot) => values(Object.values(spot)))).toEqual(
      [
        [1, 0, 76.6, 0, 76.6, 60.4],
        [2, 15, 76.6, 76.6, 0, 60.4],
        [3, 30, 76.6, 0, -76.6, 60.4],
        [4, 45, 76.6, -76.6, 0, 60.4],
      ].map((row) => row.map((value) => expect.closeTo(value, 1))),
    );
    expect(middle?.spots.map(({ fromMiddle }) => fromMiddle.value)).toEqual([51.2, 51.2, 51.2, 51.2]);
    expect(bottom?.spots.map(({ side, depth }) => `${side.text}, ${depth.text}`)).toEqual([
      '0, 77 back',
      '77 right, 0',
      '0, 77 front',
      '77 left, 0',
    ]);
  });

  it('tell whoever cuts them what to count out', () => {
    const told = view.cautions.find(({ code }) => code === 'tell-the-cutter')?.text ?? '';
    expect(told).toContain('eight supports, two cards and a dowel');
    expect(view.cautions.map(({ code }) => code)).toEqual([
      'supports-not-food',
      'tell-the-cutter',
      'two-people-lift',
      'keep-level',
      'warm-under-sheet',
      'practice-first',
    ]);
    expect(view.facts.find(({ id }) => id === 'weight')?.text).toContain('flowers are not weighed');
  });

  it('keep out of the fridge what is under sugarpaste, as their labels do', () => {
    const warmthWith = (sheets: number) => {
      const planned = demo.byHand();
      const tiers = planned.tiers.map((tier, at) => ({
        ...tier,
        finishes: tier.finishes.filter(({ use }) => at < sheets || use !== 'rolled'),
      }));
      return demo.viewOf({ ...planned, tiers }).cautions.find(({ code }) => code.startsWith('warm-'))?.text;
    };
    expect(warmthWith(3)).toMatch(/^Not in a fridge: under sugarpaste/);
    expect(warmthWith(1)).toMatch(/^What has sugarpaste on it .* chill the other tiers/);
    expect(warmthWith(0)).toMatch(/^Chill it through/);
  });

  it('ask for two people above the weight that the kitchen names', () => {
    const lift = (aboveG?: number) =>
      demo.viewOf(demo.byHand(), aboveG).cautions.find(({ code }) => code === 'two-people-lift')?.text;
    // 3,800 + 2,500 + 1,400 g of cake.
    expect(lift()).toMatch(/^One person can lift it, two above 8\u00a0kg.* 7\.7\u00a0kg/);
    expect(lift(7500)).toMatch(/^Two people lift it, as any cake above 7\.5\u00a0kg/);
  });

  it('warn of nothing', () => {
    expect(view.warnings).toEqual([]);
    expect(view.tiers.map(({ stands }) => stands)).toEqual([true, true, true]);
  });
});

describe('other stacks', () => {
  it('warn of a tier whose corners reach over the one below', () => {
    const planned = demo.byHand([{}, {}, { tin: squareTin(152.4) }]);
    const { warnings, tiers, sets } = demo.viewOf(planned);
    expect(warnings.map(({ code }) => code)).toEqual(['tier-does-not-stand']);
    expect(warnings[0]?.message).toContain(
      'The top tier leaves less than 25\u00a0mm of the middle tier free',
    );
    expect(tiers.map(({ stands }) => stands)).toEqual([true, true, false]);
    expect(sets.map(({ ledge }) => ledge === null)).toEqual([false, true]);
  });

  it('put supports into the corners under a square, told by the clock face', () => {
    const planned = demo.byHand([{ tin: squareTin(304.8) }, { tin: squareTin(203.2) }, {}]);
    const [under] = demo.viewOf(planned).sets;
    expect(under?.spots.map(({ clock }) => clock.value)).toEqual([7.5, 22.5, 37.5, 52.5]);
    // Corner 76.6 right and back; 152.4 + 10 − 76.6 to the nearest edge.
    for (const { side, depth, fromEdge } of under?.spots ?? []) {
      expect(Math.abs(side.value)).toBeCloseTo(76.6, 1);
      expect(Math.abs(depth.value)).toBeCloseTo(76.6, 1);
      expect(fromEdge.value).toBeCloseTo(85.8, 1);
    }
  });

  it('hold a tall tier up in halves, a card in its middle', () => {
    const { sets, tiers, height, cautions } = demo.viewOf(
      demo.byHand([{ coatedHeightMm: 160, builtHeightMm: 150 }]),
    );
    expect(sets.map(({ id, length }) => [id, length.value])).toEqual([
      ['tier-1-inside', 80],
      ['tier-1-top', 80],
      ['tier-2-top', 100],
    ]);
    expect(tiers[0]?.standsOnText).toContain('a second card, 10 in (25.4 cm), inside it at 80\u00a0mm');
    // 318 + 50 + 3 for the card.
    expect(height.value).toBe(371);
    // Ten inches ask for five supports: 5 + 4 + 4.
    expect(cautions.find(({ code }) => code === 'tell-the-cutter')?.text).toContain(
      '13 supports, three cards and a dowel',
    );
  });

  it('have no plan where nobody knows how wide a tier is, or nothing stands on anything', () => {
    const measured: Tin = { ...tinNamed('round-6'), shape: { kind: 'measured', volumeMl: 1500 } };
    expect(orderStack(demo.byHand([{}, {}, { tin: measured }]), demo.content.finishing)).toBe(
      'unknown-width',
    );
    const separate = demo.byHand([], { arrangement: 'separate' });
    expect(orderStack(separate, demo.content.finishing)).toBeNull();
  });
});

describe('the drawing', () => {
  const look = { scale: 4, textMm: 4, nameMm: 30 };
  const spans = (strokes: ElevationStroke[], kind: ElevationStroke['kind']): number[][] =>
    strokes
      .filter((stroke) => stroke.kind === kind)
      .map(({ steps }) => {
        const spots = steps.flatMap((step) => (step.op === 'close' ? [] : [step]));
        const [xs, ys] = [spots.map(({ x }) => x), spots.map(({ y }) => y)];
        return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
      });

  it('is to scale: cakes, boards, supports and dowel', () => {
    const { strokes } = stackElevation(view, look);
    const drawn = (kind: ElevationStroke['kind']) =>
      spans(strokes, kind).map((span) => span.map((mm) => Math.round(mm * look.scale * 10) / 10));
    expect(drawn('cake')).toEqual([
      [274, 110],
      [223.2, 100],
      [172.4, 90],
    ]);
    expect(drawn('drum')).toEqual([[355.6, 12]]);
    expect(drawn('card')).toEqual([
      [223.2, 3],
      [172.4, 3],
    ]);
    expect(drawn('dowel')).toEqual([[10, 281]]);
    // Left, middle (the front one hides the back one) and right, in two tiers.
    expect(drawn('support')).toEqual([
      ...Array.from({ length: 3 }, () => [10, 110]),
      ...Array.from({ length: 3 }, () => [10, 100]),
    ]);
  });

  it('says every height and width on a line of its own', () => {
    const { words } = stackElevation(view, look);
    expect(words.map(({ text }) => text)).toEqual(
      expect.arrayContaining(['110', '100', '90', '318', '172', '223', '274', '356']),
    );
  });
});
