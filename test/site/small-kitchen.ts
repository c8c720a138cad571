/** A kitchen small enough to build in a test, whose texts try to be markup. */
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readContent } from '../../src/read/content.ts';
import { buildSite, builtFiles, folderOutput } from '../../src/site/index.ts';
import { chartViews } from '../../src/views/chart-views.ts';

export interface BuiltKitchen {
  /** The site's folder. */
  site: string;
  remove(): void;
}

export const HOSTILE = '<img src=x onerror="alert(1)"> & <script>alert(2)</script>';
/** Ends a script that holds it as it is, then tries what runs without one. */
export const ENDING =
  '</script><svg onload="window.__pwned=1"><a href="javascript:alert(6)">]]>{{ 7 * 7 }}$&';

function write(folder: string, path: string, text: string): void {
  mkdirSync(join(folder, path, '..'), { recursive: true });
  writeFileSync(join(folder, path), text);
}

const KITCHEN = `orders: { publish: yes }
name: "Pan & Sons <b>Bakers</b>"
place: Nowhere "upon" Tyne
edition: 2026-11-01
locale: en-GB
paper: [A4]
eggs: { size: UK medium, tolerance: 6 %, otherwise: step up }
mixer: { bowl: 4.8 l, max_fill: 55 %, min_fill: 12 % }
tins:
  - { id: round-6, name: Six-inch round, shape: round, across: 6in, depth: 3in, owned: 2 }
  - { id: square-20, name: "Square <20>", shape: square, side: 20 cm, depth: 75 mm }
  - { id: loaf, name: Loaf, shape: loaf, length: 9in, width: 5in, base_length: 8in, base_width: 4in, depth: 2 3/4in }
  - { id: ring, name: Ring, shape: ring, across: 10in, tube: 3in, depth: 4in }
  - { id: dome, name: Dome, shape: dome, across: 6in }
  - { id: beehive, name: ${JSON.stringify(ENDING)}, shape: measured, volume: 1850 ml, depth: 90 mm }
`;

const INGREDIENTS = `butter: { name: Butter, role: fat, allergens: [milk] }
caster-sugar: { name: "Sugar & <i>spice</i>", role: sugar, allergens: [] }
egg: { name: Egg, role: egg, part: egg, allergens: [eggs] }
egg-yolk: { name: Egg yolk, role: egg, part: yolk, allergens: [eggs] }
flour: { name: Self-raising flour, role: flour, allergens: [gluten] }
mystery: { name: Mystery powder, role: flavouring, fine: true }
`;

const FLAVOUR = `name: ${JSON.stringify(`Spice ${ENDING}`)}
summary: ${JSON.stringify(HOSTILE)}
suits: { recipes: [plain] }
why: ${JSON.stringify(ENDING)}
adjustments:
  - add: { ingredient: mystery, per_kg: 2 g }
method: ${JSON.stringify(`${HOSTILE} [x](javascript:alert(8))`)}
`;

const FINISH = `name: ${JSON.stringify(`Jam ${ENDING}`)}
kind: jam
density: 1.3 g/ml
formula: { caster-sugar: 100 }
filling: { thickness: 2 mm }
loss: 5 %
keeps: 7 days
method: ${JSON.stringify(`${HOSTILE} [x](javascript:alert(9))`)}
`;

const ORDER = `title: ${JSON.stringify(`Birthday ${ENDING}`)}
reference: R-1
hand_over: { at: 2026-11-27 16:00, place: collected }
portions: { wanted: 10, size: dessert }
tiers:
  - { tin: round-6, recipe: plain, flavours: [spice], layers: 3, finishes: [{ finish: jam, use: filling }] }
extras:
  - { name: ${JSON.stringify(HOSTILE)}, count: 1, each: 2.50 }
decisions:
  - { question: ${JSON.stringify(ENDING)}, answer: ${JSON.stringify(HOSTILE)}, by: 2026-11-20 }
notes: ${JSON.stringify(`${HOSTILE} ${ENDING}`)}
`;

const recipe = (name: string, extra: string): string => `---
name: ${JSON.stringify(name)}
summary: ${JSON.stringify(HOSTILE)}
method: creamed
egg_size: UK medium
formula:
  butter: 250 g
  caster-sugar: 250 g
  egg: 5
${extra}  flour: 250 g
finished_height: 65 mm
allowed_rise: 5 mm
oven: 160C
layers: 2
proven_bakes:
  - { tins: 2 x round-6, finished_height: 65 mm, batter: 1005 g, note: ${JSON.stringify(HOSTILE)} }
---
Beat it. ${HOSTILE}

[A bad link](javascript:alert(3)) and [a good one](https://example.org/).

**Caution:** raw egg: do not taste it.

## Bake

1. In a hot oven.
2. Until ready.
`;

const LOGO = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9" onload="alert(4)"><script>alert(5)</script>
<a href="https://example.org/"><circle cx="4" cy="4" r="3" fill="url(https://example.org/x)"/></a>
<path d="M0 0L9 9" fill="#74304D" style="background:url(x)"/><foreignObject><p>no</p></foreignObject></svg>`;

/** Writes the kitchen's content files. */
function writeSmallKitchen(folder: string): void {
  write(folder, 'kitchen.yaml', KITCHEN);
  write(folder, 'ingredients.yaml', INGREDIENTS);
  write(folder, 'recipes/plain.md', recipe('Plain <em>cake</em>', ''));
  write(folder, 'recipes/rich.md', recipe('Rich cake', '  egg-yolk: 2\n  mystery: 4 g\n'));
  write(
    folder,
    'pages/about.md',
    `---\ntitle: ${JSON.stringify(HOSTILE)}\norder: 1\n---\n# Top\n\n${HOSTILE}\n`,
  );
  write(folder, 'flavours/spice.yaml', FLAVOUR);
  write(folder, 'finishes/jam.yaml', FINISH);
  write(folder, 'orders/birthday.yaml', ORDER);
  write(folder, 'assets/logo.svg', LOGO);
  cpSync('content/house-style.yaml', join(folder, 'house-style.yaml'));
}

/** Builds a content folder's site, with a print and two data files standing in for the rest of a build. */
async function builtSite(contentDir: string): Promise<BuiltKitchen> {
  const folder = mkdtempSync(join(tmpdir(), 'tinwright-site-'));
  const { content, problems } = await readContent(contentDir);
  if (content === null) throw new Error(JSON.stringify(problems, null, 1));
  const charts = chartViews(content);
  const [first] = charts;
  if (!first) throw new Error('the kitchen has no chart');
  write(folder, `print/tin-charts/${first.chart.id}-a4.pdf`, '%PDF-1.7');
  write(folder, `data/tin-charts/${first.chart.id}.csv`, 'tin\r\n');
  write(folder, 'print/labels/one-label.pdf', '%PDF-1.7');
  await buildSite({
    content,
    charts,
    contentDir,
    stagingDir: folder,
    files: (['print', 'data'] as const).flatMap((part) => builtFiles(part, join(folder, part))),
    output: folderOutput(join(folder, 'site')),
  });
  return { site: join(folder, 'site'), remove: () => rmSync(folder, { recursive: true, force: true }) };
}

/** The small kitchen's site. */
export async function smallSite(): Promise<BuiltKitchen> {
  const folder = mkdtempSync(join(tmpdir(), 'tinwright-kitchen-'));
  writeSmallKitchen(folder);
  try {
    return await builtSite(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export const pageText = (site: string, path: string): string => readFileSync(join(site, path), 'utf8');
