import { expect, it } from 'vitest';
import { filesOfPortions } from '../../src/views/downloads.ts';

it('the page of portions offers its sheets in every paper, and its figures', () => {
  const own = [
    'print/cutting-guides/portions-a4.pdf',
    'print/cutting-guides/portions-letter.pdf',
    'data/portions/portions.csv',
    'data/portions/portions.json',
    'data/portions/stacks.csv',
  ];
  const others = ['print/labels/full-a4.pdf', 'print/in-slate/cutting-guides/portions-a4.pdf'];
  const found = filesOfPortions([...own, ...others].map((path) => ({ path, byteCount: 1000 })));
  expect(found.map(({ path }) => path).sort()).toEqual([...own].sort());
});
