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

/** schema.org's own vocabulary (the file it publishes, kept in a package): what is a kind of what, and what may hold what. */
interface Vocabulary {
  parents: Map<string, string[]>;
  domains: Map<string, string[]>;
  ranges: Map<string, string[]>;
  superseded: Set<string>;
}

function vocabulary(): Vocabulary {
  const file = join(dirname(createRequire(import.meta.url).resolve('@vocabulary/schema')), 'schema.nq');
  const found: Vocabulary = {
    parents: new Map(),
    domains: new Map(),
    ranges: new Map(),
    superseded: new Set(),
  };
  const told: Record<string, Map<string, string[]>> = {
    subClassOf: found.parents,
    domainIncludes: found.domains,
    rangeIncludes: found.ranges,
  };
  const statement = /^<http:\/\/schema\.org\/(\w+)> <[^>]*[/#](\w+)> <[^>]*[/#](\w+)>/gm;
  for (const [, subject = '', says = '', object = ''] of readFileSync(file, 'utf8').matchAll(statement)) {
    if (says === 'supersededBy') found.superseded.add(subject);
    if (says === 'type' && object === 'Class') found.parents.set(subject, found.parents.get(subject) ?? []);
    const list = told[says];
    if (list !== undefined) list.set(subject, [...(list.get(subject) ?? []), object]);
  }
  return found;
}

/** A type with all that it is a kind of. */
function kindsOf(type: string, { parents }: Vocabulary): Set<string> {
  const kinds = new Set([type]);
  for (const kind of kinds) for (const parent of parents.get(kind) ?? []) kinds.add(parent);
  return kinds;
}

/** What a plain text may stand for: a text or one of its kinds, or a date written as ISO 8601 has it. */
const textTypes = (text: string): string[] => [
  'Text',
  ...(/^https?:\/\//.test(text) ? ['URL'] : []),
  ...(/^\d{4}-\d\d-\d\d$/.test(text) ? ['Date'] : []),
  ...(/^P(\d+D)?(T(\d+H)?(\d+M)?)?$/.test(text) ? ['Duration'] : []),
];

function typesOfValue(value: unknown, words: Vocabulary): Set<string> {
  if (typeof value === 'object' && value !== null)
    return kindsOf(String((value as Record<string, unknown>)['@type']), words);
  return new Set(typeof value === 'number' ? ['Number', 'Integer'] : textTypes(String(value)));
}

/** Every type, property and value of linked data that the vocabulary does not have, or not there. */
function foreign(value: unknown, words: Vocabulary): string[] {
  if (Array.isArray(value)) return value.flatMap((one) => foreign(one, words));
  if (typeof value !== 'object' || value === null) return [];
  const type = String((value as Record<string, unknown>)['@type']);
  const kinds = kindsOf(type, words);
  const faultsOf = ([key, held]: [string, unknown]): string[] => {
    const name = `${type}.${key}`;
    if (!words.domains.get(key)?.some((kind) => kinds.has(kind))) return [name];
    if (words.superseded.has(key)) return [`${name} is superseded`];
    const wrong = [held].flat().filter((one) => {
      const types = typesOfValue(one, words);
      return !words.ranges.get(key)?.some((range) => types.has(range));
    });
    return wrong.map((one) => `${name} = ${JSON.stringify(one)}`);
  };
  return [
    ...(words.parents.has(type) ? [] : [`type ${type}`]),
    ...Object.entries(value).flatMap(([key, inner]) => [
      ...(key.startsWith('@') ? [] : faultsOf([key, inner])),
      ...foreign(inner, words),
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
  it('of every recipe page uses schema.org’s own types and properties, each holding what it may', () => {
    const types = vocabulary();
    expect(types.parents.size).toBeGreaterThan(800);
    const wrong = {
      '@type': 'Recipe',
      flour: 1,
      dateModified: 'soon',
      author: { '@type': 'Baker' },
      servings: '4',
    };
    expect(foreign(wrong, types)).toEqual([
      'Recipe.flour',
      'Recipe.dateModified = "soon"',
      'Recipe.author = {"@type":"Baker"}',
      'type Baker',
      'Recipe.servings',
    ]);
    expect(foreign({ '@type': 'Recipe', ingredients: 'flour' }, types)).toEqual([
      'Recipe.ingredients is superseded',
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
