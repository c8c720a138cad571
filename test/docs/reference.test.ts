import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { referenceText } from '../../src/commands/reference/reference.ts';
import { type JsonSchema, schemaRows } from '../../src/commands/reference/schema-rows.ts';
import { jsonSchemaFiles } from '../../src/parse/schemas/json-schemas.ts';

describe('the reference of content files and commands', () => {
  it('is what schemas and commands say; after a change run: npm run schemas', () => {
    expect(readFileSync('schemas/REFERENCE.md', 'utf8')).toBe(referenceText());
  });

  it.each(Object.entries(jsonSchemaFiles()))('%s says of every key what it is', (_, text) => {
    const rows = schemaRows(JSON.parse(text) as JsonSchema);
    expect(rows.length).toBeGreaterThan(0);
    expect(rows.filter(({ what }) => what.trim() === '').map(({ path }) => path)).toEqual([]);
  });

  it('tells the keys of several kinds of entry together, each with the kinds that take it', () => {
    const kind = (name: string, more: Record<string, JsonSchema>): JsonSchema => ({
      properties: { shape: { const: name }, depth: { description: 'How deep' }, ...more },
      required: ['shape', 'depth'],
    });
    const schema: JsonSchema = {
      properties: {
        tins: {
          description: 'Every tin',
          items: {
            oneOf: [kind('round', {}), kind('ring', { tube: { description: 'How wide', default: 3 } })],
          },
        },
      },
    };
    expect(schemaRows(schema).map((row) => [row.path, row.needed, row.write, row.usual, row.kinds])).toEqual([
      ['tins', false, '', '', []],
      ['tins[].shape', true, 'round · ring', '', []],
      ['tins[].depth', true, '', '', []],
      ['tins[].tube', false, '', '3', ['ring']],
    ]);
  });
});

describe('the guide for contributors', () => {
  it('says of every package why it is there', () => {
    const { dependencies, devDependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as Record<
      'dependencies' | 'devDependencies',
      Record<string, string>
    >;
    const guide = readFileSync('DEVELOPERS.md', 'utf8');
    const names = Object.keys({ ...dependencies, ...devDependencies }).filter(
      (name) => !name.startsWith('@types/'),
    );
    expect(names.filter((name) => !guide.includes(`\`${name}\``))).toEqual([]);
  });
});

describe('the changelog', () => {
  const text = readFileSync('CHANGELOG.md', 'utf8');
  const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };

  it('has an entry for the version in package.json, and says which printed numbers moved, or that none did', () => {
    const [, entry = ''] = text.split(new RegExp(`^## ${version.replaceAll('.', '\\.')}\\b.*$`, 'm'));
    const ofVersion = entry.split(/^## /m)[0] ?? '';
    expect(ofVersion).toMatch(/^- /m);
    expect(ofVersion).toMatch(/printed numbers?/i);
  });
});
