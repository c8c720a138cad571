import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { jsonSchemaFiles } from '../../src/parse/schemas/json-schemas.ts';

const files = jsonSchemaFiles();
const validator = (name: string) =>
  new Ajv({ strict: false, allErrors: true }).compile(JSON.parse(files[`${name}.schema.json`] ?? ''));
const text = (path: string): string => readFileSync(path, 'utf8');
const frontMatter = (path: string): unknown => parse(text(path).split(/^---$/m)[1] ?? '');

describe('the JSON Schemas for editors', () => {
  it('are what the source says; after a change run: npm run schemas', () => {
    expect(readdirSync('schemas').sort()).toEqual([...Object.keys(files), 'REFERENCE.md'].sort());
    for (const [name, wanted] of Object.entries(files)) expect(text(`schemas/${name}`)).toBe(wanted);
  });

  it.each(['content', 'test/kitchens/good/minimal', 'test/kitchens/good/us', 'test/kitchens/good/high'])(
    'accept every file of %s',
    (folder) => {
      const accepted = (name: string, data: unknown): void => {
        const validate = validator(name);
        validate(data);
        expect(validate.errors ?? []).toEqual([]);
      };
      for (const name of ['kitchen', 'ingredients', 'house-style'])
        accepted(name, parse(text(`${folder}/${name}.yaml`)));
      for (const file of readdirSync(`${folder}/recipes`))
        accepted('recipe', frontMatter(`${folder}/recipes/${file}`));
      for (const [name, below] of [
        ['flavour', 'flavours'],
        ['finish', 'finishes'],
        ['house-style', 'house-styles'],
        ['order', 'orders'],
      ] as const) {
        if (!existsSync(`${folder}/${below}`)) continue;
        for (const file of readdirSync(`${folder}/${below}`))
          accepted(name, parse(text(`${folder}/${below}/${file}`)));
      }
    },
  );

  it('refuse a bare number, a slip in a key and a missing key', () => {
    const kitchen = parse(text('test/kitchens/good/minimal/kitchen.yaml'));
    const validate = validator('kitchen');
    const { place: _missing, ...without } = kitchen;
    expect(validate(without)).toBe(false);
    expect(validate({ ...kitchen, nmae: 'x' })).toBe(false);
    expect(validate({ ...kitchen, mixer: { bowl: 4.8 } })).toBe(false);
    expect(validate({ ...kitchen, fairy_case: '25' })).toBe(false);
  });
});
