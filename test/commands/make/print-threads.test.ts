import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { allOf, type PrintJob, printMaker, printTasks } from '../../../src/commands/make/print-tasks.ts';
import { madeByThreads } from '../../../src/commands/make/print-threads.ts';
import { readContent } from '../../../src/read/content.ts';
import { chartViews } from '../../../src/views/chart-views.ts';
import { finishingCharts } from '../../../src/views/finishing-chart.ts';
import { expectSameBytes } from '../../samples/same-bytes.ts';

const CONTENT = 'content';
/** Two kinds of one recipe; the demo's two house styles make four pieces of them. */
const QUICK = ['tin-chart', 'bake-guide'];

let job: PrintJob;
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tinwright-threads-'));
  const { content } = await readContent(CONTENT);
  if (content === null) throw new Error('the demo cannot be read');
  const kitchen = { ...content.kitchen, paper: ['A4' as const] };
  const few = { ...content, kitchen, recipes: content.recipes.slice(0, 1), flavours: [], orders: [] };
  job = { content: few, charts: chartViews(few), finishing: finishingCharts(few), contentDir: CONTENT };
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const quickTasks = () => printTasks(job.content).filter(({ kind }) => QUICK.includes(kind));

describe('prints made by threads', () => {
  it('are the files that one thread makes, in the same order', async () => {
    const tasks = quickTasks();
    const make = printMaker(job);
    const alone = [];
    for (const task of tasks) alone.push(await make(task));
    const [here, there] = [allOf(alone), allOf(await madeByThreads(job, tasks, 2))];
    if (!here.ok || !there.ok) throw new Error('the demo does not print');
    expect(tasks).toHaveLength(4);
    expect(there.value.map(({ path }) => path)).toEqual(here.value.map(({ path }) => path));
    expect(here.value).toHaveLength(4);
    for (const [index, { bytes }] of there.value.entries())
      expectSameBytes(Buffer.from(bytes), Buffer.from(here.value[index]?.bytes ?? ''));
  });

  it('tell a font that cannot be read as a problem, once for all kinds', async () => {
    const { houseStyle } = job.content;
    const fonts = { ...houseStyle.fonts, heading: 'fonts/not-there.ttf' };
    const content = { ...job.content, houseStyle: { ...houseStyle, fonts }, houseStyles: [] };
    const made = allOf(
      await madeByThreads({ ...job, content, contentDir: folder }, quickTasks().slice(0, 2), 2),
    );
    if (made.ok) throw new Error('a print without its font');
    expect(made.problems.map(({ code, file }) => [code, file])).toEqual([
      ['font-missing', 'house-style.yaml'],
    ]);
  });

  it('throw what a thread throws', async () => {
    await expect(madeByThreads(job, [{ dress: 99, kind: 'tin-chart' }], 1)).rejects.toThrow(
      'no house style 99',
    );
  });
});
