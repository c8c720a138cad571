/**
 * `npm run bench`: how fast, beside what one would use instead, on this computer and now. Every measure is a process
 * of its own, rivals take turns, and the middle of three rounds counts. `--large` adds 10,000 pages. `--growth` measures
 * a kitchen and one ten times as large instead, `--largest`, `--half` or `--quarter`
 * the largest or so much of it; parts may follow (`data,site`; else data).
 * Never a test: times belong to the day they were taken.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { LARGEST_PARTS, measureGrowth } from './scale/growth.ts';

const HELP = `npm run bench -- [option]
  (nothing)             pages, PDFs, builds and rebuilds beside what one would use instead
  --large               the same, and 10,000 pages
  --growth [parts]      a kitchen and one ten times as large: seconds and memory
  --largest [parts]     the largest kitchen, once
  --half, --quarter     so much of it in all that grows
parts: data, site, print, with commas between; data where none are named`;
const KINDS = ['--large', '--growth', ...Object.keys(LARGEST_PARTS)];
const ROUNDS = 3;
/** The one that most of the demo's orders and flavours are made of, and one that few are. */
const RECIPES = ['vanilla-equal-weights', 'lemon-tray-sponge'];
const folder = mkdtempSync(join(tmpdir(), 'tinwright-bench-'));

interface Row {
  what: string;
  ours: number;
  beside: string;
  theirs: number | null;
  goal: string;
}

const middle = (times: number[]): number =>
  times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;

function run(program: string, args: string[]): string {
  const { status, stdout, stderr } = spawnSync(program, args, { encoding: 'utf8', maxBuffer: 1 << 28 });
  if (status !== 0) throw new Error(`${args.join(' ')}: ${stderr}`);
  return stdout;
}

/** Milliseconds that a measure says it took, without the time to load the libraries. */
function measured(file: string, ...args: string[]): number {
  const said = run(process.execPath, ['--import', 'tsx', join(import.meta.dirname, file), ...args]);
  const ms = Number(/^took (\d+)$/m.exec(said)?.[1]);
  if (Number.isNaN(ms))
    throw new Error(`${[file, ...args].join(' ')} does not say how long it took: ${said}`);
  return ms;
}

/** Each measure in turn, several times over: the middle of each. */
function inTurns(...measures: (() => number)[]): number[] {
  const times: number[][] = measures.map(() => []);
  for (let round = 0; round < ROUNDS; round += 1)
    for (const [index, measure] of measures.entries()) times[index]?.push(measure());
  return times.map(middle);
}

function pages(count: number): Row {
  const data = join(folder, 'pages.json');
  measured('page-data.ts', data, String(count));
  const [ours = 0, theirs = 0] = inTurns(
    () => measured('pages.ts', 'ours', data, join(folder, 'ours')),
    () => measured('pages.ts', 'bare', data, join(folder, 'bare')),
  );
  const goal = count > 1000 ? '≤ 0.63' : '≤ 0.70';
  return { what: `${count} chart pages`, ours, beside: 'the same pages, Eleventy as it comes', theirs, goal };
}

function pdfs(): Row[] {
  const page = join(folder, 'tables.html');
  measured('pdfs.ts', 'tables-html', page);
  const measure = (kind: string) => () => measured('pdfs.ts', kind, page);
  const [ours = 0, plain = 0, browser = 0] = inTurns(
    measure('tables'),
    measure('tables-pdfkit'),
    measure('tables-browser'),
  );
  const [small = 0, woff = 0] = inTurns(measure('small'), measure('small-woff'));
  return [
    { what: '100 tagged pages', ours, beside: 'pdfkit, tagged', theirs: plain, goal: '≤ 0.55' },
    { what: '100 tagged pages', ours, beside: 'headless Chromium', theirs: browser, goal: '≤ 0.09' },
    { what: '40 small PDFs', ours: small, beside: 'pdfkit from WOFF', theirs: woff, goal: '≤ 0.25' },
  ];
}

interface Built {
  wallMs: number;
  stages: Record<string, number>;
}

/** `cache` is a folder of kept prints; null makes every one. */
function built(content: string, cache: string | null = null): Built {
  const output = join(folder, 'output');
  rmSync(output, { recursive: true, force: true });
  const before = performance.now();
  run(process.execPath, [
    'src/bin/tinwright.js',
    'build',
    '--content',
    content,
    '--output',
    output,
    '--quiet',
    ...(cache === null ? ['--no-cache'] : ['--cache', cache]),
  ]);
  const wallMs = performance.now() - before;
  const { milliseconds } = JSON.parse(readFileSync(join(output, 'report.json'), 'utf8')) as {
    milliseconds: Record<string, number>;
  };
  return { wallMs, stages: milliseconds };
}

/** The demo with every printable, in its own style alone and in both. */
function builds(): Row[] {
  const alone = join(folder, 'content');
  cpSync('content', alone, { recursive: true });
  const kitchen = join(alone, 'kitchen.yaml');
  writeFileSync(kitchen, readFileSync(kitchen, 'utf8').replace(/^house_styles:.*$/m, ''));
  let stages: Record<string, number> = {};
  const [one = 0, both = 0] = inTurns(
    () => {
      const build = built(alone);
      stages = build.stages;
      return build.wallMs;
    },
    () => built('content').wallMs,
  );
  const cache = join(folder, 'kept');
  built('content', cache);
  const [cold = 0, warm = 0] = inTurns(
    () => built('content').wallMs,
    () => built('content', cache).wallMs,
  );
  const compute = (stages.compute ?? 0) + (stages.finishing ?? 0);
  const row = (what: string, ours: number, goal: string): Row => ({
    what,
    ours,
    beside: '',
    theirs: null,
    goal,
  });
  return [
    row('demo, one house style', one, '4 s'),
    row('demo, both house styles', both, ''),
    { ...row('the same with its prints kept', warm, ''), beside: 'without', theirs: cold },
    { ...row('computing the charts', compute, '≤ 0.10'), beside: 'that build', theirs: one },
  ];
}

interface Taken {
  wallMs: number;
  cpuMs: number;
}

/** One recipe saved while the demo is served: its pages, then its prints, beside the first build of that process. */
function rebuilds(recipe: string): Row[] {
  const content = join(folder, 'served');
  cpSync('content', content, { recursive: true });
  const args = [content, join(folder, 'served-output'), recipe];
  const said = run(process.execPath, ['--import', 'tsx', join(import.meta.dirname, 'rebuild.ts'), ...args]);
  const taken = (what: string): Taken => {
    const [, wallMs, cpuMs] = new RegExp(`^${what} (\\d+) (\\d+)$`, 'm').exec(said) ?? [];
    return { wallMs: Number(wallMs), cpuMs: Number(cpuMs) };
  };
  const all = taken('all');
  const row = (what: string, of: keyof Taken, goal: string): Row[] => [
    {
      what: `${recipe} saved: pages, ${NAMES[of]}`,
      ours: taken('pages')[of],
      beside: what,
      theirs: all[of],
      goal,
    },
    {
      what: `its prints after them, ${NAMES[of]}`,
      ours: taken('prints')[of],
      beside: what,
      theirs: all[of],
      goal: '',
    },
  ];
  return [...row('all built at first', 'wallMs', '≤ 0.10'), ...row('all built at first', 'cpuMs', '≤ 0.10')];
}

const NAMES: Record<keyof Taken, string> = { wallMs: 'by the clock', cpuMs: 'of the processor' };

const seconds = (ms: number): string => `${(ms / 1000).toFixed(2)} s`;

function tableRow({ what, ours, beside, theirs, goal }: Row): string {
  const ratio = theirs === null ? '' : (ours / theirs).toFixed(2);
  return `| ${what} | ${seconds(ours)} | ${beside} | ${theirs === null ? '' : seconds(theirs)} | ${ratio} | ${goal} |`;
}

function everything(): void {
  const large = process.argv.includes('--large') ? [pages(10_000)] : [];
  const rows = [pages(1000), ...large, ...pdfs(), ...builds(), ...RECIPES.flatMap(rebuilds)];
  console.log(
    `Node ${process.version}, ${availableParallelism()} cores, the middle of ${ROUNDS} rounds in turns\n`,
  );
  console.log('| what | ours | beside | theirs | ratio | goal |\n| --- | --- | --- | --- | --- | --- |');
  for (const row of rows) console.log(tableRow(row));
}

const [kind, parts = 'data'] = process.argv.slice(2);
try {
  if (kind === '--help') console.log(HELP);
  else if (kind !== undefined && !KINDS.includes(kind)) {
    console.error(`${kind} is no option of it.\n${HELP}`);
    process.exitCode = 2;
  } else if (kind === '--growth' || (kind !== undefined && Object.hasOwn(LARGEST_PARTS, kind)))
    measureGrowth(kind, parts.split(','));
  else everything();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
