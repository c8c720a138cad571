import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { tooDeepAt } from '../../../src/parse/yaml/yaml-depth.ts';
import { yamlSource } from '../../../src/parse/yaml/yaml-source.ts';

/** Each 300,000 signs long or more, nested in one of the ways that YAML has. */
const DEEP: readonly (readonly [string, string])[] = [
  ['brackets', `a: ${'['.repeat(300_000)}`],
  ['brackets that close', `a: ${'['.repeat(150_000)}${']'.repeat(150_000)}`],
  ['braces with keys', `a: ${'{ a: '.repeat(60_000)}`],
  ['brackets behind a quoted one that closes', `a: ${'["]", '.repeat(60_000)}`],
  ['lists side by side on a line', `${'- '.repeat(150_000)}x`],
  ['keys side by side on a line', `${'? '.repeat(150_000)}x`],
  ['indents', Array.from({ length: 900 }, (_, at) => `${' '.repeat(at)}a:\n`).join('')],
];

describe('tooDeepAt', () => {
  it.each(DEEP)('finds %s before anything recurses into them', (_, text) => {
    expect(tooDeepAt(text)).toBeLessThan(60_000);
    const read = yamlSource(text, 'kitchen.yaml');
    expect(read.ok ? [] : read.problems.map(({ code }) => code)).toEqual(['yaml-too-deep']);
  });

  it.each([
    ['neighbours in braces', `x: { ${'a: 1, '.repeat(5000)} }`],
    ['neighbours in lists', `x:\n${'  - [1, [2, 3]]\n'.repeat(5000)}`],
    ['text in quotes', `x: "${'['.repeat(5000)}"`],
    ['text of several lines', `x: |\n${'  [[[ - - ?\n'.repeat(5000)}`],
    ['ten levels', `x: ${'['.repeat(10)}${']'.repeat(10)}`],
  ])('leaves %s alone', (_, text) => {
    expect(tooDeepAt(text)).toBeNull();
  });

  it('leaves every file of the demo alone', () => {
    const files = readdirSync('content', { recursive: true, encoding: 'utf8' }).filter((file) =>
      file.endsWith('.yaml'),
    );
    expect(files.length).toBeGreaterThan(20);
    for (const file of files) expect(tooDeepAt(readFileSync(join('content', file), 'utf8')), file).toBeNull();
  });
});
