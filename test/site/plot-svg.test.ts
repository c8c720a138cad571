import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import { type BakePage, bakePage } from '../../src/site/bake-pages.ts';
import { plotSvg } from '../../src/site/plot-svg.ts';
import { bakeGuideView } from '../../src/views/bake-guide.ts';
import { bakesOfRecipes } from '../../src/views/chart-inputs.ts';
import type { Plot } from '../../src/views/plot/plot.types.ts';
import { bakeWordsFor } from '../../src/wording/bake/index.ts';
import { demoContent } from '../samples/demo.ts';

let plots: Plot[] = [];
let pages: BakePage[] = [];

beforeAll(async () => {
  const content = await demoContent();
  const demo: Content = content;
  const views = [...bakesOfRecipes(demo).values()].map((bakes) => bakeGuideView(bakes, demo.kitchen, null));
  plots = views.flatMap((view) => view.plots);
  pages = views.map((view) => bakePage(view, [], bakeWordsFor('en-GB')));
});

const unescaped = (text: string): string =>
  text.replace(
    /&(amp|lt|gt|quot|#39);/g,
    (_, name: string) => ({ amp: '&', lt: '<', gt: '>', quot: '"' })[name] ?? "'",
  );

describe('a picture of bake times', () => {
  it('is an image with a title and a description that say what it shows', () => {
    expect(plots.length).toBeGreaterThan(20);
    for (const plot of plots) {
      const svg = plotSvg(plot);
      expect(svg).toMatch(/^<svg viewBox="0 0 [\d.]+ [\d.]+" role="img"/);
      expect(svg).toContain(`aria-labelledby="${plot.id}-title ${plot.id}-desc"`);
      const title = /<title id="([^"]+)">([^<]*)<\/title>/.exec(svg);
      const description = /<desc id="([^"]+)">([^<]*)<\/desc>/.exec(svg);
      expect(title?.[1]).toBe(`${plot.id}-title`);
      expect(unescaped(title?.[2] ?? '')).toBe(plot.title);
      expect(description?.[1]).toBe(`${plot.id}-desc`);
      expect(unescaped(description?.[2] ?? '').length).toBeGreaterThan(60);
      expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
    }
  });

  it('writes the ticks of both axes and names every band, line and mark beside it', () => {
    for (const plot of plots) {
      const texts = [...plotSvg(plot).matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text = '']) =>
        unescaped(text),
      );
      for (const { text } of [...plot.x.ticks, ...plot.y.ticks, ...plot.keys, ...plot.levels])
        expect(texts).toContain(text);
      expect(texts).toContain(plot.x.label);
      expect(texts).toContain(plot.y.label);
    }
  });

  it('tells its lines apart without colour, and draws them in the house’s own colours', () => {
    for (const plot of plots) {
      const svg = plotSvg(plot);
      expect(new Set(plot.lines.map(({ stroke }) => stroke)).size).toBe(plot.lines.length);
      expect(svg).not.toMatch(/(?:fill|stroke|style)="(?!none)[^"]*(?:#|rgb)/);
    }
  });

  it('stands inside its frame: nothing is drawn beyond the drawing', () => {
    for (const { widthMm, heightMm, bands, lines, marks } of plots)
      for (const { steps } of [...bands, ...lines, ...marks])
        for (const step of steps) {
          if (step.op === 'close') continue;
          expect(step.x >= 0 && step.x <= widthMm && step.y >= 0 && step.y <= heightMm).toBe(true);
        }
  });

  it('has ids of its own on its page, and its figures in a table beside it', () => {
    for (const page of pages) {
      const ids = page.plots.flatMap(({ id, svg }) => [
        id,
        ...[...svg.matchAll(/ id="([^"]+)"/g)].map(([, one]) => one),
      ]);
      expect(new Set(ids).size).toBe(ids.length);
      for (const { table, tableTitle, title } of page.plots) {
        expect(tableTitle).toContain(title);
        expect(table.rows.length).toBeGreaterThan(4);
        for (const row of table.rows) expect(row).toHaveLength(table.head.length);
      }
    }
  });
});
