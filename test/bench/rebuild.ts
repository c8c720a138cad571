/**
 * One recipe of the demo is saved while it is served: how long until its pages are there, and until its prints are?
 * Beside the first build, of the same process. Prints three lines: what, wall clock and processor time in ms.
 * Usage: rebuild.ts CONTENT OUTPUT RECIPE; the content is edited.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BuildRequest } from '../../src/build.ts';
import { openBuilder } from '../../src/commands/serve/builder.ts';

const [contentDir = '', outputDir = '', recipe = ''] = process.argv.slice(2);
const path = join(contentDir, 'recipes', `${recipe}.md`);
const builder = openBuilder(false, { say() {}, tell() {}, watched: false });

/** Where one gram more or less is still a recipe. */
function weighAnew(step: number): void {
  const text = readFileSync(path, 'utf8');
  const line = /^( {2}[a-z-]*sugar: )(\d+)( g)$/m;
  if (!line.test(text)) throw new Error(`${path} weighs no sugar`);
  writeFileSync(
    path,
    text.replace(line, (_, name, grams, unit) => `${name}${Number(grams) + step}${unit}`),
  );
}

interface Taken {
  wallMs: number;
  cpuMs: number;
}

async function taken(parts: BuildRequest['parts']): Promise<Taken> {
  const [before, used] = [performance.now(), process.cpuUsage()];
  const result = await builder.build({ contentDir, outputDir, parts });
  if (result.outcome !== 'built') throw new Error(JSON.stringify(result.problems));
  const { user, system } = process.cpuUsage(used);
  return { wallMs: performance.now() - before, cpuMs: (user + system) / 1000 };
}

const lines: [string, Taken][] = [['all', await taken(['site', 'print', 'data'])]];
// Once to warm up: somebody who edits saves again and again.
for (const step of [5, -5]) {
  weighAnew(step);
  const pages = await taken(['site', 'data']);
  const prints = await taken(['site', 'print', 'data']);
  if (step < 0) lines.push(['pages', pages], ['prints', prints]);
}
for (const [what, { wallMs, cpuMs }] of lines)
  console.log(`${what} ${Math.round(wallMs)} ${Math.round(cpuMs)}`);
await builder.close();
