/** A kitchen.yaml saved from the planner holds all that the kitchen says, and what this device changed. */
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import type { Content } from '../../src/domain/content.ts';
import { SHAPE_KINDS } from '../../src/domain/shape.ts';
import type { Tin } from '../../src/domain/tin.ts';
import { kitchenSections } from '../../src/parse/kitchen-sections.ts';
import { kitchenYaml, openedText } from '../../src/planner/kitchen-file.ts';
import { readKitchen } from '../../src/planner/kitchen-reader.ts';
import { kitchenHere, NO_OWN_KITCHEN, type OwnKitchen } from '../../src/planner/own-kitchen.ts';
import { readContent } from '../../src/read/content.ts';
import { publicKitchenText } from '../../src/site/kitchen-text.ts';
import { newFolder } from '../commands/support/folders.ts';
import { demoContent } from '../samples/demo.ts';

let demo: Content;
const AUTHORED = readFileSync('content/kitchen.yaml', 'utf8');

beforeAll(async () => {
  const content = await demoContent();
  demo = content;
});

/** What the planner of the demo saves once a device has its own settings. */
function saved(own: Partial<OwnKitchen>, publishesOrders = true): string {
  const { kitchen, problems } = kitchenHere(demo.kitchen, { ...NO_OWN_KITCHEN, ...own }, demo.outlines);
  expect(problems).toEqual([]);
  return kitchenYaml({ base: demo.kitchen, kitchen, text: publicKitchenText(AUTHORED, { publishesOrders }) });
}

const said = (text: string) => parse(text) as Record<string, unknown>;

describe('a kitchen.yaml from the planner', () => {
  it('with nothing changed is the published one, comments and all, below its own first lines', () => {
    const text = saved({});
    expect(text.endsWith(AUTHORED)).toBe(true);
    expect(readKitchen(text, demo).kitchen).toEqual(demo.kitchen);
  });

  it('is read by the build as the kitchen that was saved, and says all else as before', () => {
    const own = {
      ...{ tins: [{ description: 'round 7in x 3in', owned: 2 }], owned: { 'round-6': 5 } },
      ...{ egg: '52 g', bowl: '6.7 l', step: '1 g' },
    };
    const text = saved(own);
    const { kitchen, problems } = readKitchen(text, demo);
    expect(problems).toEqual([]);
    const { kitchen: here } = kitchenHere(demo.kitchen, { ...NO_OWN_KITCHEN, ...own }, demo.outlines);
    const tins = here.tins.map((tin) => ({ ...tin, id: tin.id.replaceAll(' ', '-') }));
    const rounded = (value: unknown): unknown =>
      JSON.parse(
        JSON.stringify(value, (_, part) => (typeof part === 'number' ? Number(part.toFixed(2)) : part)),
      );
    expect(rounded({ ...kitchen, tins: [] })).toEqual(rounded({ ...here, tins: [] }));
    const forms = (some: typeof tins = []) =>
      some.map(({ id, shape, depthMm, owned }) => rounded({ id, shape, depthMm, owned }));
    expect(forms(kitchen?.tins)).toEqual(forms(tins));
    const changed = ['eggs', 'scale', 'mixer', 'tins'];
    const others = Object.entries(said(AUTHORED)).filter(([key]) => !changed.includes(key));
    expect(others.length).toBeGreaterThan(18);
    expect(said(text)).toMatchObject(Object.fromEntries(others));
    expect(text).toContain('# How cakes are cut');
  });

  it('holds neither costs nor comments of a kitchen that keeps its orders to itself, and says so', () => {
    const text = saved({}, false);
    const { costs: _, ...others } = said(AUTHORED);
    expect(said(text)).toEqual(others);
    expect(text).toContain('so not in this file: costs:, the comments.');
    expect(text).not.toMatch(/labour|14\.00|VAT/);
    expect(readKitchen(text, demo)).toMatchObject({ problems: [], kitchen: demo.kitchen });
    const printing = `${AUTHORED}printables: [{ print: quote, orders: [mrs-x] }]\n`;
    expect(JSON.stringify(publicKitchenText(printing, { publishesOrders: false }))).not.toContain('mrs-x');
  });

  it('keeps every section of a file that was opened, its prices too', () => {
    const { kitchen } = kitchenHere(demo.kitchen, { ...NO_OWN_KITCHEN, egg: '52 g' }, demo.outlines);
    const text = kitchenYaml({ base: demo.kitchen, kitchen, text: openedText(AUTHORED) });
    expect(said(text).costs).toEqual(said(AUTHORED).costs);
    expect(said(text).eggs).toMatchObject({ weighed: '52 g' });
  });
});

describe('its tins, of every shape', () => {
  const WEST = 'test/kitchens/good/us';
  const written = readFileSync(`${WEST}/kitchen.yaml`, 'utf8');
  const rounded = (tins: readonly Tin[] | undefined): unknown =>
    JSON.parse(
      JSON.stringify(tins, (_, part) => (typeof part === 'number' ? Number(part.toFixed(2)) : part)),
    );

  async function west(folder = WEST): Promise<Content> {
    const { content, problems } = await readContent(folder);
    expect(problems).toEqual([]);
    if (content === null) throw new Error(`${folder} cannot be read`);
    return content;
  }

  it('are read by the build and by the planner as they were, a drawing with the size that the tin gave it', async () => {
    const content = await west();
    const { tins } = content.kitchen;
    expect(new Set(tins.map(({ shape }) => shape.kind))).toEqual(new Set(SHAPE_KINDS));
    const more = { ...content.kitchen, tins: tins.map((tin) => ({ ...tin, owned: tin.owned + 1 })) };
    const text = kitchenYaml({ base: content.kitchen, kitchen: more, text: openedText(written) });
    const folder = newFolder();
    cpSync(WEST, folder, { recursive: true });
    writeFileSync(`${folder}/kitchen.yaml`, text);
    const again = await west(folder);
    expect(rounded(again.kitchen.tins)).toEqual(rounded(more.tins));
    const { kitchen, problems } = readKitchen(text, content);
    expect(problems).toEqual([]);
    expect(rounded(kitchen?.tins)).toEqual(rounded(more.tins));
  });
});

describe('the sections of a kitchen.yaml', () => {
  const keysAndValues = (text: string) =>
    said(
      kitchenSections(text)
        .map((one) => one.text)
        .join(''),
    );

  it('are found however the file is laid out', () => {
    for (const text of [
      '# over a\na: 1\n\n# over b\nb:\n  - x # here\n# at the end\n',
      '---\na: |\n  one\n\n  # no comment\nb: { c: 1,\n  d: 2 }',
      '{ a: 1, b: [x, "y z"] }',
      '  a: 1\n  b: yes\n',
      '"a": 1\r\nb: two\r\n...\r\n',
    ])
      expect(keysAndValues(text), text).toEqual(said(text));
    expect(kitchenSections('# over a\na: 1\n\n# over b\nb: 2')).toEqual([
      { key: 'a', text: '# over a\na: 1\n' },
      { key: 'b', text: '\n# over b\nb: 2\n' },
    ]);
  });
});
