/** The package as npm would publish it: what is in it, and that it works in a folder of its own. */
import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { newFolder } from '../commands/support/folders.ts';

function shell(cwd: string, command: string, ...args: string[]): string {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd, encoding: 'utf8' });
  expect([command, ...args, status, status === 0 ? '' : stderr]).toEqual([command, ...args, 0, '']);
  return stdout;
}

interface Packed {
  filename: string;
  files: { path: string }[];
}

describe('the package', () => {
  it('holds templates, schemas, the starting kitchen and the launcher; no tests, no demo, no TypeScript', () => {
    const listing = shell('.', 'npm', 'pack', '--dry-run', '--json', '--ignore-scripts');
    const [{ files } = { files: [] }] = JSON.parse(listing) as Packed[];
    const paths = files.map(({ path }) => path);
    const below = (folder: string) =>
      readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => join(entry.parentPath, entry.name));
    const needed = ['templates', 'schemas'].flatMap(below);
    const alone = [
      'src/bin/tinwright.js',
      'src/bin/load-program.js',
      'src/bin/print-worker.js',
      '.eleventy.js',
    ];
    expect(paths).toEqual(
      expect.arrayContaining([...needed, ...alone, 'README.md', 'LICENSE', 'CHANGELOG.md', 'package.json']),
    );
    const strays = paths.filter((path) =>
      /\.tsx?$|\.map$|tsbuildinfo|^(test|content|output|\.c)|^dist\/test/.test(path),
    );
    expect(strays).toEqual([]);
  });

  const inTheLongRun = process.env.TINWRIGHT_LONG === undefined ? () => undefined : it;
  inTheLongRun('is packed, installed in an empty folder, and makes a kitchen of its own there', () => {
    const checkout = newFolder();
    const root = resolve('.');
    for (const name of [
      'src',
      'templates',
      'schemas',
      'package.json',
      '.eleventy.js',
      'README.md',
      'LICENSE',
      'CHANGELOG.md',
    ])
      cpSync(join(root, name), join(checkout, name), { recursive: true });
    symlinkSync(join(root, 'node_modules'), join(checkout, 'node_modules'));
    const packed = JSON.parse(shell(checkout, 'npm', 'pack', '--json').replace(/^[^[]*/, '')) as Packed[];
    const tarball = join(checkout, packed[0]?.filename ?? '');

    const folder = newFolder();
    writeFileSync(join(folder, 'package.json'), '{ "private": true }');
    shell(folder, 'npm', 'install', '--prefer-offline', '--no-audit', '--no-fund', tarball);
    const installed = join(folder, 'node_modules/tinwright');
    expect(existsSync(join(installed, 'src/commands'))).toBe(false);
    shell(folder, 'npx', 'tinwright', 'new', 'my-kitchen', '--yes');
    shell(folder, 'npx', 'tinwright', 'check', '--content', 'my-kitchen');
    shell(folder, 'npx', 'tinwright', 'build', '--content', 'my-kitchen', '--quiet');
    const site = readdirSync(join(folder, 'output/site'), { recursive: true }).map(String);
    expect(site).toEqual(expect.arrayContaining(['index.html', 'planner.html', 'charts.html']));
    const scripts = readdirSync(join(folder, 'output/site/script')).filter((name) => /planner/.test(name));
    expect(scripts.length).toBeGreaterThan(0);
    expect(readdirSync(join(folder, 'output/print/tin-charts')).length).toBeGreaterThan(0);
    const line = /schema=(\S+)/.exec(readFileSync(join(folder, 'my-kitchen/kitchen.yaml'), 'utf8'))?.[1];
    expect(line).toBe('../node_modules/tinwright/schemas/kitchen.schema.json');
    // A kitchen that is its own folder needs no --content.
    mkdirSync(join(folder, 'own'));
    shell(join(folder, 'own'), 'npx', 'tinwright', 'new', '.', '--yes');
    shell(join(folder, 'own'), 'npx', 'tinwright', 'build', '--only', 'data', '--quiet');
    shell(join(folder, 'own'), 'npx', 'tinwright', 'check');
  });
});
