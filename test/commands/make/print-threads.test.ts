import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { DrawnPrint } from '../../../src/commands/make/made-file.ts';
import { type PrintJob, printFiles } from '../../../src/commands/make/print-files.ts';
import { type PrintHouse, printHouse } from '../../../src/commands/make/print-house.ts';
import { allOf, type PrintTask, printMaker, printTasks } from '../../../src/commands/make/print-tasks.ts';
import { type PrintThreads, printThreads, suits } from '../../../src/commands/make/print-threads.ts';
import type { Result } from '../../../src/domain/result.ts';
import { piecesOfKind } from '../../../src/prints/catalogue.ts';
import { readContent } from '../../../src/read/content.ts';
import { chartViews } from '../../../src/views/chart-views.ts';
import { finishingCharts } from '../../../src/views/finishing-chart.ts';
import { expectSameBytes } from '../../samples/same-bytes.ts';

const CONTENT = 'content';
/** Two kinds of one recipe; the demo's two house styles make four pieces of them. */
const QUICK = ['tin-chart', 'bake-guide'];

let job: PrintJob;
let house: PrintHouse;
let tasks: PrintTask[];
let threads: PrintThreads;
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tinwright-threads-'));
  threads = printThreads(2);
  const { content } = await readContent(CONTENT);
  if (content === null) throw new Error('the demo cannot be read');
  const kitchen = { ...content.kitchen, paper: ['A4' as const] };
  const few = { ...content, kitchen, recipes: content.recipes.slice(0, 1), flavours: [], orders: [] };
  job = { content: few, charts: chartViews(few), finishing: finishingCharts(few), contentDir: CONTENT };
  const read = await printHouse(few, CONTENT);
  if (!read.ok) throw new Error('the demo has no fonts');
  house = read.value;
  const pieces = QUICK.flatMap((kind) => [...piecesOfKind(job, kind)]);
  tasks = [...printTasks(house, pieces)];
});

afterAll(async () => {
  await threads.close();
  rmSync(folder, { recursive: true, force: true });
});

/** What was made of each task, in their order. */
async function madeBy(of: PrintHouse, asked: readonly PrintTask[]): Promise<Result<DrawnPrint[]>[]> {
  const made: Result<DrawnPrint[]>[] = [];
  await threads.make(of, asked, (at, files) => {
    made[at] = files;
  });
  return made;
}

describe('prints made by threads', () => {
  it('are the files that one thread makes, in the same order, run after run', async () => {
    const here = allOf(tasks.map(printMaker(house)));
    expect(tasks).toHaveLength(4);
    for (const asked of [tasks, tasks]) {
      const there = allOf(await madeBy(house, asked));
      if (!here.ok || !there.ok) throw new Error('the demo does not print');
      expect(there.value.map(({ path }) => path)).toEqual(here.value.map(({ path }) => path));
      expect(here.value).toHaveLength(4);
      for (const [index, { bytes }] of there.value.entries())
        expectSameBytes(Buffer.from(bytes), Buffer.from(here.value[index]?.bytes ?? ''));
    }
  });

  it('carry what the next run says of the house', async () => {
    const [task] = tasks;
    if (task === undefined) throw new Error('no task');
    const [made] = await madeBy({ ...house, author: 'Another Kitchen' }, [task]);
    if (!made?.ok) throw new Error('no print');
    expect(Buffer.from(made.value[0]?.bytes ?? '').toString('latin1')).toContain('Another Kitchen');
  });

  it('tell a font that cannot be read as a problem, once for all kinds', async () => {
    const { houseStyle } = job.content;
    const fonts = { ...houseStyle.fonts, heading: 'fonts/not-there.ttf' };
    const content = { ...job.content, houseStyle: { ...houseStyle, fonts }, houseStyles: [] };
    const made = await printFiles({ ...job, content, contentDir: folder }, { threads: () => threads });
    if (made.ok) throw new Error('a print without its font');
    expect(made.problems.map(({ code, file }) => [code, file])).toEqual([
      ['font-missing', 'house-style.yaml'],
    ]);
  });

  it('are handed on one by one, and come back without their bytes', async () => {
    const taken = new Map<string, number>();
    const help = { threads: () => threads };
    const made = await printFiles(job, help, ({ path, bytes }) => taken.set(path, bytes?.length ?? 0));
    if (!made.ok) throw new Error('the demo does not print');
    expect(made.value.length).toBeGreaterThan(0);
    expect(made.value.every(({ bytes }) => bytes === null)).toBe(true);
    expect(new Map(made.value.map(({ path, byteCount }) => [path, byteCount]))).toEqual(taken);
  });

  it('stop where one cannot be taken, and make the next run whole', async () => {
    const full = threads.make(house, tasks, () => {
      throw new Error('the disk is full');
    });
    await expect(full).rejects.toThrow('the disk is full');
    const made = await madeBy(house, tasks);
    expect(made.map(({ ok }) => ok)).toEqual(tasks.map(() => true));
  });

  it('are asked for as they are made: a run of many holds few', async () => {
    const [dress] = house.dresses;
    const [task] = tasks;
    if (dress === undefined || task === undefined) throw new Error('no style');
    const { piece } = task;
    // With fonts that nobody can read every piece comes back at once, as a problem.
    const nothing = { name: 'broken.ttf', bytes: new Uint8Array(4) };
    const files = { text: nothing, textBold: nothing, textItalic: nothing, heading: nothing };
    const broken = { ...house, dresses: [{ ...dress, fonts: { files, hash: 'broken' } }] };
    let [told, back, most] = [0, 0, 0];
    function* many(): Generator<PrintTask> {
      while (told < 1000) {
        told += 1;
        most = Math.max(most, told - back);
        yield { dress: 0, piece };
      }
    }
    await threads.make(broken, many(), () => {
      back += 1;
    });
    expect(back).toBe(1000);
    expect(most).toBeLessThan(200);
  });

  it('are each for one thread to make where they are large, and for any other otherwise', () => {
    const piece = { index: 0, dress: 0, kind: 'booklet', folder: null, from: 7 };
    const [small, large] = [
      { ...piece, to: 1_000_000 },
      { ...piece, to: 30_000_000 },
    ];
    const [first, other] = [{ takesLarge: true }, { takesLarge: false }];
    expect([suits(small, first), suits(small, other)]).toEqual([true, true]);
    expect([suits(large, first), suits(large, other)]).toEqual([true, false]);
  });

  it('are made where they are large, whoever has time for the others', async () => {
    const [task] = tasks;
    if (task === undefined) throw new Error('no task');
    // Text that no piece has, and that is not read.
    const input = task.piece.input.replace(/\}$/, `,"more":"${'m'.repeat(21_000_000)}"}`);
    const large = { ...task, piece: { ...task.piece, input } };
    const made = await madeBy(house, [large, ...tasks, large]);
    expect(made.map((one) => one.ok)).toEqual(Array(tasks.length + 2).fill(true));
    const hashOf = (at: number) => (made[at]?.ok ? made[at].value[0]?.sha256 : undefined);
    expect([hashOf(0), hashOf(tasks.length + 1)]).toEqual([hashOf(1), hashOf(1)]);
  });

  it('throw what a thread throws', async () => {
    const doomed = printThreads(1);
    const [task] = tasks;
    if (task === undefined) throw new Error('no task');
    await expect(doomed.make(house, [{ ...task, dress: 99 }], () => {})).rejects.toThrow('no house style 99');
    await doomed.close();
  });
});
