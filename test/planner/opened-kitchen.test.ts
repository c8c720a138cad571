/** What an opened kitchen.yaml says beside its tins: it wins where it speaks, and nobody's address is lent to it. */
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import { readKitchen } from '../../src/planner/kitchen-reader.ts';
import { demoContent } from '../samples/demo.ts';

let demo: Content;

beforeAll(async () => {
  const content = await demoContent();
  demo = content;
});

const MINE = [
  'name: Another kitchen',
  'place: Elsewhere',
  'edition: 2026-11-01',
  'locale: en-GB',
  'paper: [A4]',
  'eggs: { size: UK large }',
  'scale: { step: 5 g }',
  'mixer: { bowl: 4.8 l }',
  'tins:',
  '  - { id: round-8, name: Round, shape: round, across: 8in, depth: 3in }',
];

const read = (...more: string[]) => readKitchen([...MINE, ...more, ''].join('\n'), demo);

describe('an opened kitchen.yaml', () => {
  it('of the published kitchen says what the build reads of it', () => {
    const { kitchen, settings, problems } = readKitchen(readFileSync('content/kitchen.yaml', 'utf8'), demo);
    expect(problems).toEqual([]);
    expect(kitchen).toEqual(demo.kitchen);
    const { finishing, portionSizes, work, label, business } = demo;
    expect(settings).toEqual({
      ...{ finishing, portionSizes, currency: demo.costs.currency },
      house: { work, label, business },
    });
  });

  it('of another kitchen takes its own address for labels, or none, never the published one', () => {
    expect(read().problems).toEqual([]);
    expect(read().settings).toEqual({ house: { business: null } });
    const own = read(
      'business: { name: Another kitchen, address: [1 Lane] }',
      'currency: EUR',
      'altitude: 1200 m',
    );
    expect(own.problems).toEqual([]);
    expect(own.settings).toMatchObject({
      altitudeM: 1200,
      currency: { code: 'EUR' },
      house: { business: { name: 'Another kitchen', address: ['1 Lane'] } },
    });
    expect(own.settings.finishing).toBeUndefined();
  });

  it('that cannot be read changes nothing', () => {
    const { kitchen, settings, problems } = read('oven: warm');
    expect(kitchen).toBeNull();
    expect(settings).toEqual({});
    expect(problems.length).toBeGreaterThan(0);
  });
});
