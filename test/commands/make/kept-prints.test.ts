import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { type KeptPrints, openKeptPrints } from '../../../src/commands/make/kept-prints.ts';
import type { DrawnPrint } from '../../../src/commands/make/made-file.ts';
import { type PrintJob, printFiles } from '../../../src/commands/make/print-files.ts';
import { type PrintHouse, printHouse } from '../../../src/commands/make/print-house.ts';
import { printKeys } from '../../../src/commands/make/print-key.ts';
import { printTasks } from '../../../src/commands/make/print-tasks.ts';
import { tidyFolder } from '../../../src/commands/make/tidy-folder.ts';
import { PRINTABLES, piecesOf } from '../../../src/prints/catalogue.ts';
import { readContent } from '../../../src/read/content.ts';
import { chartViews } from '../../../src/views/chart-views.ts';
import { finishingCharts } from '../../../src/views/finishing-chart.ts';
import { wantedPrints } from '../../../src/views/wanted-prints.ts';
import { newFolder } from '../support/folders.ts';

const KEY = 'ab'.padEnd(64, '0');

const made = (path: string, text: string): DrawnPrint => {
  const bytes = Buffer.from(text);
  return { path, bytes, byteCount: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') };
};
const FILES = [made('tin-charts/a.pdf', 'one'), made('in-slate/tin-charts/b.pdf', 'two\nlines')];

const said = (files: readonly DrawnPrint[] | null) =>
  files?.map(({ path, bytes, sha256 }) => [path, Buffer.from(bytes).toString(), sha256]) ?? null;

function keptIn(folder: string): { kept: KeptPrints; entry: string } {
  const kept = openKeptPrints(folder);
  kept.keep(KEY, FILES);
  return { kept, entry: join(folder, 'ab', KEY) };
}

describe('a kept print', () => {
  it('comes back byte for byte, under its own key only', () => {
    const { kept } = keptIn(newFolder());
    expect(said(kept.find(KEY))).toEqual(said(FILES));
    expect(kept.find(`ac${KEY.slice(2)}`)).toBeNull();
    expect(kept.damaged()).toBe(0);
  });

  it('is not used with any one byte changed, left out or added', () => {
    const { kept, entry } = keptIn(newFolder());
    const sound = readFileSync(entry);
    const broken = [...sound.keys()].flatMap((at) => {
      const changed = Buffer.from(sound);
      changed[at] = (changed[at] ?? 0) ^ 1;
      return [changed, sound.subarray(0, at)];
    });
    for (const bytes of [...broken, Buffer.concat([sound, Buffer.from('x')])]) {
      writeFileSync(entry, bytes);
      expect(kept.find(KEY)).toBeNull();
      expect(existsSync(entry)).toBe(false);
    }
    expect(kept.damaged()).toBe(broken.length + 1);
    expect(kept.damaged()).toBe(0);
    console.log(`${broken.length + 1} damaged entries found out`);
  });

  it('is not used when it is somebody else’s: another key’s entry, or one that would write elsewhere', () => {
    const folder = newFolder();
    const { kept, entry } = keptIn(folder);
    const other = `cd${KEY.slice(2)}`;
    mkdirSync(join(folder, 'cd'));
    writeFileSync(join(folder, 'cd', other), readFileSync(entry));
    expect(kept.find(other)).toBeNull();
    for (const path of ['../../elsewhere.pdf', '/elsewhere.pdf', 'tin-charts/../../x.pdf', 'x.html']) {
      kept.keep(KEY, [made(path, 'one')]);
      expect(kept.find(KEY), path).toBeNull();
    }
  });

  it('does without a folder that cannot be written or read', () => {
    const folder = join(newFolder(), 'a-file');
    writeFileSync(folder, '');
    const { kept } = keptIn(folder);
    expect(kept.find(KEY)).toBeNull();
    kept.tidy();
    expect(kept.damaged()).toBe(0);
  });
});

describe('a folder of kept prints', () => {
  it('drops what was used longest ago, half-written entries and what is a month old, and nothing of anybody else’s', () => {
    const folder = newFolder();
    const now = 1_800_000_000_000;
    const day = 24 * 3_600_000;
    const place = (name: string, ageMs: number, text = '12345') => {
      const path = join(folder, name.slice(0, 2), name);
      mkdirSync(join(folder, name.slice(0, 2)), { recursive: true });
      writeFileSync(path, text);
      utimesSync(path, (now - ageMs) / 1000, (now - ageMs) / 1000);
    };
    const key = (first: string) => first.padEnd(64, '0');
    place(key('a1'), 0);
    place(key('a2'), day);
    place(key('a3'), 2 * day);
    place(key('a4'), 31 * day, '');
    place(`${key('a5')}.17.part`, 2 * 3_600_000, '');
    place(`${key('a6')}.17.part`, 1000, '');
    place('my-own-file', 400 * day);
    tidyFolder(folder, now, 12);
    const left = readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map(({ name }) => name);
    expect(left.sort()).toEqual([key('a1'), key('a2'), `${key('a6')}.17.part`, 'my-own-file'].sort());
  });
});

describe('prints of a kitchen', () => {
  let job: PrintJob;
  let house: PrintHouse;

  beforeAll(async () => {
    const contentDir = 'test/kitchens/good/minimal';
    const { content } = await readContent(contentDir);
    if (content === null) throw new Error('the kitchen cannot be read');
    job = { content, charts: chartViews(content), finishing: finishingCharts(content), contentDir };
    const read = await printHouse(content, contentDir);
    if (!read.ok) throw new Error('no fonts');
    house = read.value;
  });

  it('are the same drawn, kept, found again, and with an entry spoilt', async () => {
    const folder = newFolder();
    const few = {
      ...job,
      content: { ...job.content, printables: [{ print: 'tin-chart' as const, mass: 'g' as const }] },
    };
    const run = async (kept?: KeptPrints) => {
      const files = await printFiles(few, kept === undefined ? {} : { kept });
      if (!files.ok) throw new Error('no prints');
      return said(files.value.map((file) => ({ ...file, bytes: file.bytes ?? Buffer.from('not drawn') })));
    };
    const fresh = await run();
    const kept = openKeptPrints(folder);
    expect(await run(kept)).toEqual(fresh);
    const drawn: string[] = [];
    const watched = { ...kept, keep: (key: string) => void drawn.push(key) };
    expect(await run(watched)).toEqual(fresh);
    expect(drawn).toEqual([]);
    const [shelf = ''] = readdirSync(folder);
    const [entry = ''] = readdirSync(join(folder, shelf));
    writeFileSync(join(folder, shelf, entry), 'spoilt');
    expect(await run(watched)).toEqual(fresh);
    expect(drawn).toEqual([entry]);
    expect(kept.damaged()).toBe(1);
  });

  it('have keys of their own: another edition, style, font, paper or program would be another print', () => {
    const tasks = [...printTasks(house, piecesOf(job))];
    const keys = tasks.map(printKeys(house));
    expect(new Set(keys).size).toBe(tasks.length);
    const [dress] = house.dresses;
    if (dress === undefined) throw new Error('no style');
    const others: PrintHouse[] = [
      { ...house, edition: '2031-01-01' },
      { ...house, author: 'Another' },
      { ...house, producer: 'Tinwright 99' },
      { ...house, dresses: [{ ...dress, folder: 'in-slate/' }] },
      { ...house, dresses: [{ ...dress, fonts: { ...dress.fonts, hash: 'another' } }] },
      {
        ...house,
        dresses: [{ ...dress, style: { ...dress.style, marginMm: { ...dress.style.marginMm, top: 99 } } }],
      },
    ];
    for (const other of others)
      for (const [at, key] of tasks.map(printKeys(other)).entries()) expect(key).not.toBe(keys[at]);
  });

  it('lose nothing when what they show is written as text', () => {
    const { content, charts, finishing } = job;
    const inputs = PRINTABLES.flatMap((one) =>
      wantedPrints(content, charts, one.kind).flatMap((wanted) => [...one.inputs({ finishing, ...wanted })]),
    );
    expect(inputs.length).toBeGreaterThan(20);
    for (const input of inputs) expect(JSON.parse(JSON.stringify(input))).toEqual(input);
  });
});
