import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import { orderPages } from '../../src/site/order-pages.ts';
import { publishedFiles } from '../../src/site/published-files.ts';
import { demoContent } from '../samples/demo.ts';

const FILES = [
  'print/tin-charts/vanilla-a4.pdf',
  'print/orders/saturday-quote-a4.pdf',
  'print/in-slate/orders/saturday-order-sheet-a4.pdf',
  'print/labels/orders/saturday-full-a4.pdf',
  'data/orders/saturday.json',
  'data/weeks/2026-w48.ics',
  'data/tin-charts/vanilla.csv',
].map((path) => ({ path, byteCount: 1 }));

let content: Content;
beforeAll(async () => {
  content = await demoContent();
});

describe('a kitchen that does not say it publishes its orders', () => {
  it('has no page of them', () => {
    const pages = orderPages({ ...content, publishesOrders: false }, FILES);
    expect(pages).toEqual({ orders: [], orderPages: [], weekPages: [] });
  });

  it('keeps their prints, labels and data off the site, and all others on it', () => {
    const kept = publishedFiles(FILES, { publishesOrders: false }).map(({ path }) => path);
    expect(kept).toEqual(['print/tin-charts/vanilla-a4.pdf', 'data/tin-charts/vanilla.csv']);
    expect(publishedFiles(FILES, { publishesOrders: true })).toEqual(FILES);
  });
});

describe('a kitchen that publishes them', () => {
  it('has a page for each order and week, each saying for whom the figures are', () => {
    const { orders, orderPages: pages, weekPages } = orderPages(content, []);
    expect(orders).toHaveLength(1);
    expect(pages.map(({ head }) => head.path)).toContain('orders/three-tiers-for-sixty.html');
    expect(weekPages.map(({ head }) => head.path)).toEqual([
      'orders/week-2026-w48.html',
      'orders/week-2026-w49.html',
    ]);
    expect(pages[0]?.words.private).toContain('baker only');
  });

  it('has the sheets of a step beside it, and its labels and calendar', () => {
    const files = [
      'print/orders/numeral-six-quote-a4.pdf',
      'print/orders/numeral-six-shopping-list-a4.pdf',
      'print/labels/orders/numeral-six-full-85x110-a4.pdf',
      'data/orders/numeral-six.json',
      'data/orders/numeral-six.ics',
    ];
    const { orderPages: pages } = orderPages(
      content,
      files.map((path) => ({ path, byteCount: 1 })),
    );
    const beside = pages.find(({ order }) => order.id === 'numeral-six')?.stepFiles ?? {};
    const pathsOf = (step: string): string[] =>
      (beside[step] ?? []).flatMap((group) => group.files.map(({ path }) => path));
    expect(pathsOf('shop')).toEqual(['files/print/orders/numeral-six-shopping-list-a4.pdf']);
    expect(pathsOf('pack')).toEqual(['files/print/labels/orders/numeral-six-full-85x110-a4.pdf']);
    expect(pathsOf('when')).toEqual(['files/data/orders/numeral-six.ics']);
    expect(pathsOf('quote')).toEqual(['files/print/orders/numeral-six-quote-a4.pdf']);
  });

  it('gathers the files of one order only, though another’s name begins alike', () => {
    const files = ['data/orders/numeral-six.json', 'data/orders/numeral-six-times-two.json'];
    const { orderPages: pages } = orderPages(
      content,
      files.map((path) => ({ path, byteCount: 1 })),
    );
    const own = pages.find(({ order }) => order.id === 'numeral-six')?.files.flatMap((group) => group.files);
    expect(own?.map(({ path }) => path)).toEqual(['files/data/orders/numeral-six.json']);
  });
});
