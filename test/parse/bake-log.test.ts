import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Tin } from '../../src/domain/tin.ts';
import { parseBakeLogCsv } from '../../src/parse/bake-log.ts';

const HEAD = 'date,recipe,tin,batter,oven,minutes,done_by';
const context = {
  spec: { tins: [], outlines: [] },
  recipes: { ids: ['vanilla'], broken: [] },
  flavours: { ids: [], broken: [] },
  found: [],
};
const read = (...rows: string[]) => parseBakeLogCsv([HEAD, ...rows].join('\n'), 'bake-log.csv', context);

describe('parseBakeLogCsv', () => {
  it('reads units in the cells: fan heat as conventional, hours as minutes, a probe as its reading', () => {
    const { rows, problems } = read('2026-03-14,vanilla,round 8in x 3in,2 lb,140C fan,1 h 5 min,probe 96C');
    expect(problems).toEqual([]);
    expect(rows[0]).toMatchObject({ ovenC: 160, minutes: 65, probeC: 96, count: 1, core: 'none', line: 2 });
    expect(rows[0]?.batterG).toBeCloseTo(907.18, 1);
  });

  it('keeps the good rows beside a bad one, oldest first, and tells the bad one by line and column', () => {
    const { rows, problems } = read(
      '2026-03-21,vanilla,round 8in x 3in,900 g,160C,55 min,',
      '2026-03-28,vanila,round 8in x 3in,900 g,160C,55 min,',
      '2026-03-14,vanilla,round 6in x 3in,500 g,160C,48 min,skewer',
    );
    expect(rows.map(({ date }) => date)).toEqual(['2026-03-14', '2026-03-21']);
    expect(problems).toMatchObject([{ code: 'recipe-unknown', file: 'bake-log.csv', line: 3, column: 12 }]);
  });

  it('loses no row below a quotation mark that is never closed', () => {
    const { rows, problems } = read(
      '2026-03-21,vanilla,round 8in x 3in,900 g,160C,55 min,"skewer',
      '2026-03-28,vanilla,round 8in x 3in,900 g,160C,54 min,',
    );
    expect(rows).toHaveLength(1);
    expect(problems).toMatchObject([{ code: 'csv-quote-unclosed', line: 2 }]);
  });

  it('takes an empty file for a log with nothing in it', () => {
    expect(parseBakeLogCsv('', 'bake-log.csv', context)).toEqual({ rows: [], problems: [] });
  });

  it('reads the example of the README, optional columns, other order and all', () => {
    const [, example = ''] = /```csv\n([\s\S]*?)```/.exec(readFileSync('README.md', 'utf8')) ?? [];
    const tins = [8, 10].map(
      (acrossIn): Tin => ({
        id: `round-${acrossIn}`,
        name: `${acrossIn} in`,
        shape: { kind: 'round', acrossMm: acrossIn * 25.4 },
        depthMm: 76.2,
        owned: 1,
        unit: 'in',
      }),
    );
    const { rows, problems } = parseBakeLogCsv(example, 'bake-log.csv', {
      ...context,
      spec: { tins, outlines: [] },
      recipes: { ids: ['vanilla-equal-weights'], broken: [] },
    });
    expect(problems).toEqual([]);
    expect(rows).toMatchObject([
      {
        count: 2,
        batterG: 900,
        ovenC: 160,
        minutes: 53,
        doneBy: 'skewer',
        finishedHeightMm: 65,
        massOutG: 805,
        notes: 'Level',
      },
      { ovenC: 150, probeC: 95, batterC: 18 },
    ]);
  });

  it('knows which oven, and how warm the batter went in', () => {
    const head = `${HEAD},which_oven,batter_temperature`;
    const text = `${head}\n2026-03-14,vanilla,round 8in x 3in,900 g,160C,55 min,,small,68F`;
    const { rows, problems } = parseBakeLogCsv(text, 'bake-log.csv', {
      ...context,
      ovens: { ids: ['main', 'small'], broken: [] },
    });
    expect(problems).toEqual([]);
    expect(rows[0]).toMatchObject({ ovenId: 'small', batterC: 20 });
    const unknown = parseBakeLogCsv(text, 'bake-log.csv', context);
    expect(unknown.problems).toMatchObject([{ code: 'oven-unknown', line: 2 }]);
  });
});
