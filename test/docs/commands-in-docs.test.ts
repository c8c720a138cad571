/** Every command in README.md is run as it stands there: the tutorial in an empty folder, the others in the demo. */
import { spawnSync } from 'node:child_process';
import { appendFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { LAUNCHER } from '../commands/support/command-line.ts';
import { newFolder } from '../commands/support/folders.ts';

const TUTORIAL = 'From an empty folder to a printed chart';
const SELLING = 'Publish it, and sell the prints';
const LONG = process.env.TINWRIGHT_LONG !== undefined;

interface Block {
  section: string;
  language: string;
  /** What was said just before it. */
  lead: string;
  text: string;
}

function blocksOf(markdown: string): Block[] {
  return markdown.split(/^## /m).flatMap((part, index) => {
    const section = index === 0 ? '' : (part.split('\n')[0] ?? '');
    return [...part.matchAll(/([^\n]*)\n\n```(\w+)\n([\s\S]*?)```/g)].map(
      ([, lead = '', language = '', text = '']) => ({
        section,
        language,
        lead,
        text,
      }),
    );
  });
}

const BLOCKS = blocksOf(readFileSync('README.md', 'utf8'));

const commandsIn = (blocks: readonly Block[]): string[] =>
  blocks
    .filter(({ language }) => language === 'sh')
    .flatMap(({ text }) => text.split('\n').map((line) => line.replace(/\s+#.*$/, '').trim()))
    .filter((line) => line !== '');

/** As a shell reads it, with the checkout's own program for `npx tinwright`. */
function runIn(folder: string, line: string): void {
  const command = line.replace(/^npx tinwright/, `"${process.execPath}" "${resolve(LAUNCHER)}"`);
  const { status, stderr } = spawnSync(command, { cwd: folder, shell: true, encoding: 'utf8' });
  expect([line, status, stderr.replace(/^Its imprint .*\n/, '')]).toEqual([line, 0, '']);
}

/** A whole build only in the long run; the quick one makes its data. */
const affordable = (line: string): string | null => {
  if (LONG) return line;
  if (/ bundle /.test(line)) return null;
  return / build\b/.test(line) ? `${line} --only data` : line;
};

describe('commands in README.md', () => {
  const elsewhere = BLOCKS.filter(({ section }) => section !== TUTORIAL && section !== SELLING);

  it('outside the tutorial are what CI runs, or answer in the demo', () => {
    const ci = readFileSync('.ci/run', 'utf8');
    const lines = commandsIn(elsewhere);
    expect(lines.length).toBeGreaterThanOrEqual(6);
    for (const line of lines) {
      const parts = line.split(' && ');
      if (parts.every((part) => part.startsWith('npm '))) {
        for (const part of parts) expect(ci).toContain(part);
      } else runIn('.', line);
    }
  });

  it('in the tutorial lead from an empty folder to a chart, and on to a zip', () => {
    const folder = newFolder();
    const steps = BLOCKS.filter(({ section }) => section === TUTORIAL || section === SELLING);
    let made = 0;
    for (const step of steps) {
      const file = /`(my-kitchen\/[\w./-]+)`/.exec(step.lead)?.[1];
      if (step.language === 'yaml' && file !== undefined) {
        const path = join(folder, file);
        mkdirSync(dirname(path), { recursive: true });
        if (existsSync(path)) appendFileSync(path, step.text);
        else writeFileSync(path, step.text);
        made += 1;
      }
      for (const line of commandsIn([step])) {
        // The package's own test installs it.
        if (line === 'npm init -y' || line === 'npm install tinwright') continue;
        expect(line).toMatch(/^npx tinwright /);
        const now = affordable(line);
        if (now !== null) runIn(folder, now);
      }
    }
    expect(made).toBe(2);
    const output = LONG ? 'output/print/tin-charts' : 'output/data';
    expect(existsSync(join(folder, output))).toBe(true);
    if (LONG) expect(existsSync(join(folder, 'charts.zip'))).toBe(true);
  });

  it('in the build service’s steps are those that the tutorial runs', () => {
    const steps =
      BLOCKS.find(({ section, language }) => section === SELLING && language === 'yaml')?.text ?? '';
    const lines = [...steps.matchAll(/- (npx tinwright .*)/g)].map(([, line = '']) => line);
    expect(lines).toHaveLength(2);
    const known = commandsIn(BLOCKS);
    for (const line of lines) expect(known).toContain(line);
  });
});

describe('files named in the guides', () => {
  it.each(['README.md', 'DEVELOPERS.md'])('%s names only files and folders that are there', (guide) => {
    // Words in capitals stand for a name of one's own.
    const named = [
      ...readFileSync(guide, 'utf8').matchAll(/`((?:src|test|templates|schemas|\.ci)\/[\w./-]+)`/g),
    ];
    const missing = named
      .map(([, path = '']) => path)
      .filter((path) => !/\b(NAME|TAG|CODE|ISSUER-TOPIC)\b/.test(path) && !existsSync(path));
    expect(missing).toEqual([]);
  });
});
