import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, constants } from 'node:zlib';
import { HtmlValidate } from 'html-validate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoOutput } from '../build/support/demo-output.ts';
import { filesBelow, linkFaults, pagesOf, somePages } from './site-files.ts';
import { type BuiltKitchen, HOSTILE, pageText, smallSite } from './small-kitchen.ts';

let small: BuiltKitchen;
let demo: { site: string };

beforeAll(async () => {
  small = await smallSite();
  demo = { site: join(demoOutput(), 'site') };
});

afterAll(() => small.remove());

const GOOD_LINK = 'https://example.org/';

describe('links', () => {
  it('of the demo all lead to a file and an anchor of the site, and are relative', () => {
    const { count, faults } = linkFaults(demo.site);
    expect(faults).toEqual([]);
    expect(count).toBeGreaterThan(1000);
    console.log(`${count} links of ${pagesOf(demo.site).length} pages followed`);
  });

  it('of a kitchen with markup in its texts too, besides the one the baker wrote', () => {
    expect(linkFaults(small.site, [GOOD_LINK]).faults).toEqual([]);
  });

  it('reach every page from the first one', () => {
    const seen = new Set(['index.html']);
    for (const page of seen) {
      for (const [, path = ''] of pageText(demo.site, page).matchAll(/href="([^"#]+\.html)/g)) {
        seen.add(new URL(path, `file:///${page}`).pathname.slice(1));
      }
    }
    expect(pagesOf(demo.site).filter((page) => !seen.has(page))).toEqual(['404.html', 'offline.html']);
  });

  it('lead from home to every recipe and its chart in one step', () => {
    const home = pageText(demo.site, 'index.html');
    for (const page of pagesOf(demo.site).filter((path) => path.startsWith('recipes/'))) {
      expect(home).toContain(`href="${page}"`);
      expect(home).toContain(`href="${page.replace('recipes/', 'charts/')}"`);
    }
  });
});

describe('pages', () => {
  const validator = new HtmlValidate({ extends: ['html-validate:standard', 'html-validate:a11y'] });

  it('are valid HTML, in the demo and in a kitchen with markup in its texts', () => {
    for (const { site } of [demo, small]) {
      const faults = (site === small.site ? pagesOf(site) : somePages(site)).flatMap((page) =>
        validator
          .validateStringSync(pageText(site, page))
          .results.flatMap(({ messages }) => messages)
          .map(({ line, ruleId, message }) => `${page}:${line} ${ruleId}: ${message}`),
      );
      expect(faults).toEqual([]);
    }
  });

  it('carry no inline script, handler or style, and no element that loads from elsewhere', () => {
    for (const { site } of [demo, small]) {
      for (const page of pagesOf(site)) {
        const html = pageText(site, page);
        // Scripts are files of the site; linked data is no script, and no tag in it can end it.
        const scripts = html.match(/<script\b[^>]*>[^<]*/g) ?? [];
        for (const script of scripts)
          expect(script, page).toMatch(
            /^<script( src="[^":]+"( data-[a-z]+="[^"]*")* defer>|(?= type="application\/ld\+json">\{))/,
          );
        // Addresses and descriptions may hold any text: only what stands outside quotes is markup.
        const markup = html.replace(/"[^"]*"/g, '""');
        expect(markup, page).not.toMatch(
          /<[^>]+\son[a-z]+=|<style|<[^>]+\sstyle=|<iframe|<object|<embed|<base/i,
        );
      }
    }
  });

  it('have one h1, a title of their own and a way back to the content', () => {
    const titles = new Set<string>();
    for (const page of pagesOf(demo.site)) {
      const html = pageText(demo.site, page);
      expect(html.match(/<h1[\s>]/g), page).toHaveLength(1);
      expect(html, page).toContain('<a class="skip" href="#main">');
      titles.add(/<title>([^<]+)<\/title>/.exec(html)?.[1] ?? '');
    }
    expect(titles.size).toBe(pagesOf(demo.site).length);
  });

  it('show markup in a baker’s texts as text', () => {
    const shown = HOSTILE.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
    const recipe = pageText(small.site, 'recipes/plain.html');
    expect(recipe).toContain('Plain &lt;em&gt;cake&lt;/em&gt;');
    expect(recipe).toContain(`<p class="lead">${shown.replaceAll('"', '&quot;')}</p>`);
    expect(recipe).not.toContain('href="javascript:');
    expect(recipe).toContain('<p class="caution"><strong>Caution:</strong> raw egg');
    expect(recipe).toContain('<h3>Bake</h3>');
    for (const page of pagesOf(small.site)) {
      expect(pageText(small.site, page), page).not.toMatch(/<img|<script>|<em>cake|<i>spice/);
    }
  });

  it('keep only drawing in the logo, and let its colours follow the theme', () => {
    const home = pageText(small.site, 'index.html');
    expect(home).not.toMatch(/onload|foreignObject|example\.org|url\(/);
    const kitchen = pageText(demo.site, 'index.html');
    expect(kitchen).toContain('fill="var(--accent)"');
  });

  it('tell yolks beside the count of eggs', () => {
    expect(pageText(small.site, 'charts/rich.html')).toMatch(/class="egg-words">\w+ eggs? and \w+ yolks?</);
    expect(pageText(small.site, 'charts/plain.html')).not.toContain('egg-words');
  });

  it('offer each built file with its size', () => {
    const downloads = pageText(small.site, 'downloads.html');
    expect(downloads).toMatch(
      /href="files\/print\/tin-charts\/plain-a4\.pdf" download>PDF, A4<\/a> <small>1 kB/,
    );
    expect(downloads).toContain('files/print/labels/one-label.pdf');
    expect(filesBelow(small.site)).toContain('files/data/tin-charts/plain.csv');
  });
});

describe('styles and scripts', () => {
  it('name no colour and no font outside the house style', () => {
    for (const folder of ['templates/style', 'templates/layouts', 'templates/parts', 'templates/script']) {
      for (const name of filesBelow(folder)) {
        const text = readFileSync(join(folder, name), 'utf8').replace(/&#?\w+;/g, '');
        expect(text, name).not.toMatch(/#[0-9a-f]{3,8}\b(?![^<]*<\/a>)/i);
        expect(text, name).not.toMatch(/rgba?\(|hsla?\(|oklch\(/);
        for (const [, family = ''] of text.matchAll(/font-family:\s*([^;]+);/g)) {
          expect(family, name).toMatch(/^var\(--font-(text|heading)\)$/);
        }
      }
    }
  });

  it('ask nobody for anything', () => {
    for (const name of filesBelow(demo.site).filter((path) => path.endsWith('.css'))) {
      const text = pageText(demo.site, name);
      expect(text, name).not.toContain('@import');
      for (const [, address = ''] of text.matchAll(/url\(([^)]*)\)/g)) {
        expect(address.slice(0, 5), name).toBe('data:');
      }
    }
  });

  it('are small: 60 kB hold, as a host compresses them with Brotli, the shared files, and again any page', () => {
    const { bytes } = JSON.parse(readFileSync('test/bench/budgets.json', 'utf8')) as {
      bytes: Record<'page' | 'shared' | 'planner', number>;
    };
    expect(bytes).toEqual({ page: 60_000, shared: 60_000, planner: 120_000 });
    const params = { [constants.BROTLI_PARAM_QUALITY]: 5 };
    const sizeOf = (path: string): number =>
      brotliCompressSync(readFileSync(join(demo.site, path)), { params }).byteLength;
    const all = filesBelow(demo.site).filter((path) => /^(style|script)\//.test(path));
    const linked = pageText(demo.site, 'tins.html').match(/(?:src|href)="((?:style|script)\/[^"]+)"/g) ?? [];
    const shared = all.filter((path) => linked.some((link) => link.includes(`"${path}"`)));
    expect(shared.length).toBeGreaterThan(3);
    expect(shared.reduce((sum, path) => sum + sizeOf(path), 0)).toBeLessThan(bytes.shared);
    // The planner with what it knows of the kitchen, before anybody prints.
    const planner = ['script/planner.js', 'script/planner-data.js', 'style/planner.css'];
    expect(planner.reduce((sum, path) => sum + sizeOf(path), 0)).toBeLessThan(bytes.planner);
    const heavy = pagesOf(demo.site).filter((path) => sizeOf(path) > bytes.page);
    expect(heavy.map((path) => `${path} ${sizeOf(path)}`)).toEqual([]);
  });
});

it('two builds of a kitchen give the same bytes', async () => {
  const again = await smallSite();
  const paths = filesBelow(small.site);
  expect(filesBelow(again.site)).toEqual(paths);
  for (const path of paths) {
    expect(readFileSync(join(again.site, path)).equals(readFileSync(join(small.site, path))), path).toBe(
      true,
    );
  }
  again.remove();
});
