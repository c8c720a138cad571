import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PROBLEM_CODES } from '../../src/parse/codes.ts';
import { readContent } from '../../src/read/content.ts';
import { formatProblem } from '../../src/read/format-problem.ts';
import { badKitchens, expectedMessages, layOutBadKitchen } from '../kitchens/bad-kitchen.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'bad-kitchens-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const EVERY_CODE: ReadonlySet<string> = new Set(PROBLEM_CODES);

describe('a bad kitchen', () => {
  it.each(badKitchens())('%s is told exactly what is wrong, where, and what to write', async (name) => {
    const kitchen = join(folder, name);
    layOutBadKitchen(name, kitchen);
    const { content, problems } = await readContent(kitchen);
    // The folder itself is named in one message and lies elsewhere on every machine.
    const told = problems.map(formatProblem).join('\n').replaceAll(kitchen, 'KITCHEN');
    expect(told).toBe(expectedMessages(name));
    expect(content === null).toBe(problems.some((problem) => problem.severity === 'error'));
  });
});

describe('the list of problem codes', () => {
  it('has a kitchen of its own for every code, which makes that mistake and no other', () => {
    for (const code of PROBLEM_CODES) {
      const codes = [...expectedMessages(code).matchAll(/^(?:\S+: )?(?:error|warning) \[([a-z0-9-]+)\]/gm)];
      expect(new Set(codes.map((match) => match[1]))).toEqual(new Set([code]));
    }
    expect(PROBLEM_CODES.length).toBe(EVERY_CODE.size);
    expect(PROBLEM_CODES.length).toBeGreaterThanOrEqual(40);
  });

  it('declares every code that the source of parse and read can write', () => {
    const written = ['src/parse', 'src/read'].flatMap((room) =>
      readdirSync(room, { recursive: true, encoding: 'utf8' })
        .filter((file) => file.endsWith('.ts') && file !== 'codes.ts')
        .flatMap((file) => [
          ...readFileSync(join(room, file), 'utf8').matchAll(
            /(?:\b(?:error|warning|refuse)\(|errorAt\([^,()]*(?:\([^()]*\))?,|code:)\s*'([a-z0-9-]+)'/g,
          ),
        ]),
    );
    const codes = new Set(written.map((match) => match[1] ?? ''));
    expect([...codes].filter((code) => !EVERY_CODE.has(code))).toEqual([]);
    expect(codes.size).toBeGreaterThan(60);
  });
});
