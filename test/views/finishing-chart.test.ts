import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import { finishingChartView } from '../../src/views/finishing-chart.ts';
import type { FinishingCell, FinishingChartView } from '../../src/views/finishing-chart.types.ts';
import { readDemo } from '../samples/demo.ts';

let content: Content;
let view: FinishingChartView;
beforeAll(async () => {
  const read = await readDemo();
  if (read.content === null) throw new Error('the demo content is wrong');
  content = read.content;
  view = finishingChartView(content);
});

function cellOf(tinId: string, columnId: string): FinishingCell {
  const at = view.columns.findIndex(({ id }) => id === columnId);
  const cell = view.rows.find(({ id }) => id === tinId)?.cells[at];
  if (!cell) throw new Error(`no ${columnId} for ${tinId}`);
  return cell;
}

describe('finishingChartView(content)', () => {
  it('has a row for every tin with a shape, smallest first, and says why the others are left out', () => {
    const drawn = content.kitchen.tins.filter(({ shape }) => shape.kind !== 'measured');
    expect(view.rows.map(({ id }) => id).sort()).toEqual(drawn.map(({ id }) => id).sort());
    expect(view.leftOut.map(({ id }) => id)).toEqual(['beehive']);
    expect(view.leftOut[0]?.text).toContain('Beehive mould');
  });

  it('has a column for every finish in every use, kind by kind', () => {
    expect(view.finishes).toHaveLength(content.finishes.length);
    expect(view.columns.map(({ id }) => id)).toEqual(
      expect.arrayContaining([
        'vanilla-buttercream--filling',
        'vanilla-buttercream--dam',
        'vanilla-buttercream--coating',
        'sugarpaste--rolled',
        'sugar-syrup--brushed',
      ]),
    );
    for (const row of view.rows) expect(row.cells).toHaveLength(view.columns.length);
  });

  it('coats an eight-inch round 100 mm high as one works it out by hand', () => {
    // π·(109.6²·108 − 101.6²·100) mm³ at 1.05 g/mL, 10 % on top.
    const byHand = ((Math.PI * (109.6 ** 2 * 108 - 101.6 ** 2 * 100)) / 1000) * 1.05;
    const coat = cellOf('round-8', 'vanilla-buttercream--coating');
    expect(coat.needed.value).toBeCloseTo(byHand, 1);
    expect(coat.make.value).toBeCloseTo(byHand * 1.1, 1);
    expect(coat.make.text).toBe(String(Math.round(byHand * 1.1)));
  });

  it('weighs parts that add up to what is made, to the step of the scale', () => {
    for (const row of view.rows) {
      row.cells.forEach((cell, at) => {
        const column = view.columns[at];
        const finish = content.finishes.find(({ id }) => id === column?.finish.id);
        if (cell === null || finish === undefined) return;
        const sum = cell.parts.reduce((total, { figure }) => total + figure.value, 0);
        const into = cell.make.value / (1 - finish.cookingLossShare);
        expect(Math.abs(sum / into - 1)).toBeLessThan(0.02);
      });
    }
  });

  it('rolls a square sheet for a square cake and a round one for a round, and buys whole packets', () => {
    const square = cellOf('square-8', 'sugarpaste--rolled');
    const round = cellOf('round-8', 'sugarpaste--rolled');
    expect([square.sheet?.form, round.sheet?.form]).toEqual(['rectangle', 'round']);
    // 203.2 + 2·8 across, 108 high on both sides, 25 mm to trim on both.
    expect(round.sheet?.across).toEqual({ value: 485.2, unit: 'mm', text: '48.5 cm' });
    expect(round.buy?.value).toBe(2000);
    expect(round.buy && round.buy.value >= round.make.value).toBe(true);
  });

  it('gives board, box and ribbon for the coated cake', () => {
    const row = view.rows.find(({ id }) => id === 'round-8');
    expect(row?.board.text).toBe('12 in (30.5 cm)');
    expect(row?.boxHeight.value).toBe(100 + 8 + 12 + 50);
    expect(row?.ribbon.value).toBeCloseTo(Math.PI * 219.2 + 20, 2);
    expect(row?.paperStrip?.length.value).toBeCloseTo(Math.PI * 203.2 + 20, 1);
  });

  it('says from how many eggs a part comes', () => {
    const curd = cellOf('round-8', 'lemon-curd--filling');
    expect(curd.parts.map(({ spoons }) => spoons)).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^from \d+ eggs?$/),
        expect.stringMatching(/^from \d+ yolks?$/),
      ]),
    );
  });

  it('warns that fresh cream never goes under a rolled sheet, and promises nothing', () => {
    expect(view.warnings.map(({ code }) => code)).toEqual(['cream-under-sheet']);
    expect(JSON.stringify(view)).not.toMatch(/vegan|-free\b|free from/i);
  });

  it('narrows to tins and finishes, and grows with every size', () => {
    const narrow = finishingChartView(content, {
      id: 'two',
      tinIds: ['round-6', 'round-8'],
      finishIds: ['raspberry-jam'],
    });
    expect(narrow.rows.map(({ id }) => id)).toEqual(['round-6', 'round-8']);
    expect(narrow.columns.map(({ id }) => id)).toEqual(['raspberry-jam--filling']);
    expect(narrow.warnings).toEqual([]);
    const thick = finishingChartView({
      ...content,
      finishing: { ...content.finishing, layers: 5, cakeHeightMm: 140 },
    });
    thick.rows.forEach((row, at) => {
      row.cells.forEach((cell, column) => {
        const before = view.rows[at]?.cells[column];
        if (cell && before && row.picture.profile !== 'dome') {
          expect(cell.make.value).toBeGreaterThan(before.make.value);
        }
      });
    });
  });

  it('is plain data', () => {
    expect(JSON.parse(JSON.stringify(view))).toEqual(view);
  });
});
