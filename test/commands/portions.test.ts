import { describe, expect, it } from 'vitest';
import { ask } from './support/command-line.ts';

interface PortionsAnswer {
  wanted: number;
  size: string;
  keeps_top_tier: boolean;
  stacks: {
    tins: string[];
    portions: number;
    over: number;
    batter_g: number;
    eggs: string;
    height_mm: number;
    ingredients_cost_minor: number | null;
  }[];
  has_more: boolean;
}

const answered = async (...args: string[]): Promise<PortionsAnswer> => {
  const { code, stdout } = await ask('portions', ...args, '--json');
  expect(code).toBe(0);
  return JSON.parse(stdout) as PortionsAnswer;
};

describe('portions', () => {
  it('answers with stacks of the kitchen’s own tins, fewest over first', async () => {
    const answer = await answered('--for', '60');
    expect(answer.stacks).toHaveLength(10);
    for (const { portions, over, batter_g } of answer.stacks) {
      expect(portions - 60).toBe(over);
      expect(batter_g).toBeGreaterThan(1000);
    }
    // More batter costs more: the same recipe for every stack.
    const byBatter = [...answer.stacks].sort((a, b) => a.batter_g - b.batter_g);
    const costs = byBatter.map((stack) => stack.ingredients_cost_minor ?? 0);
    expect(costs[0]).toBeGreaterThan(100);
    expect(costs.at(-1)).toBeGreaterThan(costs[0] ?? 0);
    const over = answer.stacks.map((stack) => stack.over);
    expect(over).toEqual([...over].sort((a, b) => a - b));
  });

  it('keeps the top tier back when asked: the same stack then counts one tier less', async () => {
    const plain = await answered('--for', '60');
    const kept = await answered('--for', '60', '--keep-top');
    expect(kept.keeps_top_tier).toBe(true);
    for (const { tins } of kept.stacks) expect(tins.length).toBeGreaterThan(1);
    expect(kept.stacks[0]?.batter_g).toBeGreaterThan(
      plain.stacks[0]?.batter_g ?? Number.POSITIVE_INFINITY - 1,
    );
  });

  it('is told in words, with the caution about supports', async () => {
    const { code, stdout } = await ask('portions', '--for', '40', '--size', 'finger');
    expect(code).toBe(0);
    expect(stdout).toContain('40 portions (finger) of');
    expect(stdout).toContain('Caution: ');
  });

  it('says everything wrong with the question at once', async () => {
    const { code, stderr } = await ask(
      'portions',
      '--for',
      'many',
      '--size',
      'desert',
      '--recipe',
      'nothing',
    );
    expect(code).toBe(2);
    expect(stderr).toContain('--for');
    expect(stderr).toContain("'dessert'");
    expect(stderr).toContain('--recipe');
  });

  it('says so when no stack is large enough', async () => {
    const { code, stdout } = await ask('portions', '--for', '900');
    expect(code).toBe(0);
    expect(stdout).toContain('bake a cake for cutting beside it');
  });
});
