import { describe, expect, it } from 'vitest';
import { deflated } from '../../../src/commands/make/deflated.ts';
import { readContent } from '../../../src/read/content.ts';
import { chartViews } from '../../../src/views/chart-views.ts';

describe('the charts of a large kitchen', () => {
  it('are packed, and say what they say unpacked', async () => {
    const { content } = await readContent('test/kitchens/good/minimal');
    if (content === null) throw new Error('the kitchen cannot be read');
    const plain = chartViews(content);
    const kept: number[] = [];
    const pack = (value: unknown): Uint8Array => {
      const packed = deflated.pack(value);
      kept.push(packed.length);
      return packed;
    };
    const packed = chartViews(content, (_key, make) => make(), { ...deflated, pack, mostRows: 0 });
    expect(kept).toHaveLength(plain.length);
    for (const [at, { chart, guide, workingTitle }] of packed.entries()) {
      expect(chart).toEqual(plain[at]?.chart);
      expect(JSON.stringify(chart)).toBe(JSON.stringify(plain[at]?.chart));
      expect([guide, workingTitle]).toEqual([plain[at]?.guide, plain[at]?.workingTitle]);
      expect(kept[at]).toBeLessThan(JSON.stringify(chart).length / 3);
    }
    expect(JSON.stringify(packed[0]?.working())).toBe(JSON.stringify(plain[0]?.working()));
  });

  it('are held as they are while there are few', async () => {
    const { content } = await readContent('test/kitchens/good/minimal');
    if (content === null) throw new Error('the kitchen cannot be read');
    const [views] = chartViews(content, (_key, make) => make(), deflated);
    expect(views?.chart).toBe(views?.chart);
    expect(Object.getOwnPropertyDescriptor(views, 'chart')?.get).toBeUndefined();
  });
});
