/** What machines read of a published site: linked data, sitemap, feed, manifest, addresses of pages. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { SaxesParser } from 'saxes';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoOutput } from '../build/support/demo-output.ts';
import { pagesOf } from './site-files.ts';

const ROOT = 'https://dunnock-stair.example.org';
let site = '';
const text = (path: string): string => readFileSync(join(site, path), 'utf8');

beforeAll(() => {
  site = join(demoOutput(), 'site');
});

/** schema.org's own vocabulary as schema-dts 2.1.0 writes it down: each type's properties and what it inherits. */
function vocabulary(): Map<string, { parents: string[]; properties: Set<string> }> {
  const folder = dirname(createRequire(import.meta.url).resolve('schema-dts'));
  const written = readFileSync(join(folder, 'schema.d.ts'), 'utf8');
  const types = new Map<string, { parents: string[]; properties: Set<string> }>();
  for (const [, name = '', parents = '', body = ''] of written.matchAll(
    /^interface (\w+)Base extends ([^{]+) \{([\s\S]*?)^\}/gm,
  )) {
    const properties = [...body.matchAll(/^ {4}"(\w+)"\?:/gm)].map(([, property = '']) => property);
    const own = [...parents.matchAll(/(\w+)Base/g)].map(([, parent = '']) => parent);
    types.set(name, { parents: own, properties: new Set(properties) });
  }
  return types;
}

/** Every type and property of linked data that the vocabulary does not have. */
function foreign(value: unknown, types: ReturnType<typeof vocabulary>): string[] {
  if (Array.isArray(value)) return value.flatMap((one) => foreign(one, types));
  if (typeof value !== 'object' || value === null) return [];
  const type = String((value as Record<string, unknown>)['@type']);
  const has = (name: string, property: string): boolean => {
    const known = types.get(name);
    return (
      known !== undefined &&
      (known.properties.has(property) || known.parents.some((one) => has(one, property)))
    );
  };
  return [
    ...(types.has(type) ? [] : [`type ${type}`]),
    ...Object.entries(value).flatMap(([key, inner]) => [
      ...(key.startsWith('@') || has(type, key) ? [] : [`${type}.${key}`]),
      ...foreign(inner, types),
    ]),
  ];
}

/** Names of elements in order, and their texts; throws where the file is not well-formed. */
function elements(xml: string): { name: string; text: string }[] {
  const found: { name: string; text: string }[] = [];
  const parser = new SaxesParser({ xmlns: true });
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name }) => found.push({ name, text: '' }));
  parser.on('text', (piece) => {
    const last = found.at(-1);
    if (last !== undefined) last.text += piece.trim();
  });
  parser.write(xml).close();
  return found;
}

describe('linked data', () => {
  it('of every recipe page uses schema.org’s own types and properties', () => {
    const types = vocabulary();
    expect(types.size).toBeGreaterThan(400);
    expect(foreign({ '@type': 'Recipe', flour: 1, author: { '@type': 'Baker' } }, types)).toEqual([
      'Recipe.flour',
      'type Baker',
    ]);
    const recipes = pagesOf(site).filter((path) => path.startsWith('recipes/'));
    for (const path of recipes) {
      const data = /<script type="application\/ld\+json">(.*?)<\/script>/s.exec(text(path))?.[1];
      const recipe = JSON.parse(data ?? 'null') as Record<string, unknown>;
      expect(recipe['@type'], path).toBe('Recipe');
      expect(foreign(recipe, types), path).toEqual([]);
      for (const one of ['name', 'recipeIngredient', 'recipeInstructions', 'recipeYield'])
        expect(recipe[one], `${path} ${one}`).toBeTruthy();
    }
    expect(recipes.length).toBeGreaterThan(5);
  });
});

describe('lists', () => {
  it('sitemap: every page but the one for missing pages, once', () => {
    const listed = elements(text('sitemap.xml')).flatMap(({ name, text: told }) =>
      name === 'loc' ? [told] : [],
    );
    const pages = pagesOf(site).filter((path) => path !== '404.html');
    expect([...listed].sort()).toEqual(pages.map((path) => `${ROOT}/${path}`).sort());
  });

  it('feed: well-formed Atom with all that RFC 4287 asks of feed and entries', () => {
    const found = elements(text('feed.xml'));
    const count = (name: string): number => found.filter((one) => one.name === name).length;
    const entries = pagesOf(site).filter((path) => path.startsWith('recipes/')).length;
    expect(found[0]?.name).toBe('feed');
    expect(count('entry')).toBe(entries);
    for (const name of ['id', 'title', 'updated']) expect(count(name), name).toBe(entries + 1);
    expect(count('author')).toBe(1);
  });

  it('manifest: its icons are there, in the sizes it says, and it starts at a page', () => {
    const manifest = JSON.parse(text('manifest.webmanifest')) as {
      start_url: string;
      icons: { src: string; sizes: string; type: string }[];
    };
    expect(pagesOf(site)).toContain(manifest.start_url);
    expect(manifest.icons.filter(({ type }) => type === 'image/png')).toHaveLength(2);
    for (const { src, sizes, type } of manifest.icons) {
      const bytes = readFileSync(join(site, src));
      // A PNG's width and height stand in its first chunk (ISO/IEC 15948, 11.2.2, from memory).
      if (type === 'image/png') expect(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`).toBe(sizes);
    }
  });

  it('every page names its own address and a picture that is there', () => {
    for (const path of pagesOf(site)) {
      const html = text(path);
      expect(html, path).toContain(`<link rel="canonical" href="${ROOT}/${path}">`);
      expect(html, path).toContain(`<meta property="og:url" content="${ROOT}/${path}">`);
      const picture = /og:image" content="https:\/\/dunnock-stair\.example\.org\/([^"]+)"/.exec(html)?.[1];
      const bytes = readFileSync(join(site, picture ?? 'none'));
      expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)], path).toEqual([1200, 630]);
    }
  });
});
