/** The program that the launcher makes of the sources and keeps: what an interrupted or full disk leaves of it. */
import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fill, newFolder } from '../commands/support/folders.ts';

/** A checkout of a few lines, with the real launcher in it. */
function smallCheckout(): string {
  const root = newFolder();
  fill(root, {
    'package.json': '{ "type": "module" }',
    'src/commands/oven.ts': "export const heat: string = 'hot';",
    'src/commands/main.ts':
      "export async function run(args: string[]): Promise<number> {\n  const { heat } = await import('./oven.ts');\n  console.log(heat, ...args);\n  return 0;\n}\n",
    'src/commands/make/print-worker.ts': 'export function servePrints(): void {}',
    'src/eleventy.ts': 'export function wireKitchen(): void {}',
  });
  cpSync('src/bin', join(root, 'src/bin'), { recursive: true });
  symlinkSync(resolve('node_modules'), join(root, 'node_modules'));
  return root;
}

const ran = (root: string) => {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(root, 'src/bin/tinwright.js'), 'now'],
    {
      encoding: 'utf8',
    },
  );
  return { status, stdout, stderr };
};
const HOT = { status: 0, stdout: 'hot now\n', stderr: '' };

function keptFolder(root: string): string {
  const [name = '', ...others] = readdirSync(join(root, '.cache/run'));
  expect(others).toEqual([]);
  return join(root, '.cache/run', name);
}

const programsIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.mjs'));

describe('the kept program', () => {
  it('is made again whole when a file of it was cut short, is missing, or its checksums are', () => {
    const root = smallCheckout();
    expect(ran(root)).toEqual(HOT);
    const folder = keptFolder(root);
    const whole = Object.fromEntries(
      programsIn(folder).map((name) => [name, readFileSync(join(folder, name), 'utf8')]),
    );
    expect(Object.keys(whole).length).toBeGreaterThan(3);
    const faults = [
      () => truncateSync(join(folder, 'commands/main.mjs'), 20),
      () => rmSync(join(folder, 'commands/main.mjs')),
      () => writeFileSync(join(folder, 'checksums.json'), '{"commands/'),
    ];
    for (const fault of faults) {
      fault();
      expect(ran(root)).toEqual(HOT);
      for (const [name, text] of Object.entries(whole))
        expect(readFileSync(join(folder, name), 'utf8')).toBe(text);
    }
  });

  it('is done without where it cannot be kept', () => {
    const root = smallCheckout();
    writeFileSync(join(root, '.cache'), 'a file');
    expect(ran(root)).toEqual(HOT);
  });

  it('is not taken from a folder that a killed process was still filling', () => {
    const root = smallCheckout();
    mkdirSync(join(root, '.cache/run/0123456789abcdef0123.1.1/commands'), { recursive: true });
    expect(ran(root)).toEqual(HOT);
  });
});
