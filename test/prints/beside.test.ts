/** Two columns: as high as the taller one, with the air above them that they ask for, and none below. */
import { describe, expect, it } from 'vitest';
import { beside } from '../../src/prints/sheet/blocks.ts';
import { sheetContext } from '../../src/prints/sheet/sheet-context.ts';
import type { Block } from '../../src/prints/sheet/strip.ts';
import { sampleFonts } from '../samples/fonts.ts';
import { sampleStyle } from '../samples/house-style.ts';

const context = sheetContext(sampleStyle, sampleFonts().metrics);

const strips =
  (...sizes: [heightMm: number, spaceMm: number][]): Block =>
  () =>
    sizes.map(([heightMm, spaceMm]) => ({ heightMm, spaceMm, keepWithNext: false, draw: () => {} }));

const sizeOf = (left: Block, right: Block) =>
  beside([left], [right])(100, context).map(({ heightMm, spaceMm }) => ({ heightMm, spaceMm }));

describe('two columns', () => {
  it('have the air above that the taller one asks for', () => {
    expect(sizeOf(strips([10, 4], [5, 2]), strips([3, 7]))).toEqual([{ heightMm: 17, spaceMm: 4 }]);
  });

  it('have more where the other one, nearly as tall, asks for more', () => {
    expect(sizeOf(strips([10, 1]), strips([9, 5]))).toEqual([{ heightMm: 10, spaceMm: 4 }]);
  });

  it('are as high as the one that has anything', () => {
    expect(sizeOf(strips(), strips([9, 5]))).toEqual([{ heightMm: 9, spaceMm: 5 }]);
  });
});
