import { describe, expect, it } from 'vitest';
import { frontMatter } from '../../../src/parse/yaml/front-matter.ts';
import { plainLines } from '../../../src/parse/yaml/readable-text.ts';
import { yamlSource } from '../../../src/parse/yaml/yaml-source.ts';

function source(text: string) {
  const result = yamlSource(text, 'a.yaml');
  if (!result.ok) throw new Error(result.problems[0]?.message);
  return result.value;
}

const codes = (text: string): (string | number | undefined)[][] => {
  const result = yamlSource(text, 'a.yaml');
  return result.ok ? [] : result.problems.map(({ code, line, column }) => [code, line, column]);
};

describe('yamlSource', () => {
  const text = "name: Plain\ntins:\n  - { id: 'round-8', across: 8in }\n  - id: square\n";

  it('knows where every value and every key stands', () => {
    const { at, atKey, atText } = source(text);
    expect(at(['name'])).toEqual({ file: 'a.yaml', line: 1, column: 7 });
    expect(at(['tins', 0, 'across'])).toEqual({ file: 'a.yaml', line: 3, column: 30 });
    expect(atKey(['tins', 0, 'across'])).toEqual({ file: 'a.yaml', line: 3, column: 22 });
    expect(at(['tins', 0, 'id'])).toEqual({ file: 'a.yaml', line: 3, column: 11 });
    expect(atText(['tins', 0, 'id'])).toEqual({ file: 'a.yaml', line: 3, column: 12 });
  });

  it('names the nearest thing around a value that is missing', () => {
    expect(source(text).at(['tins', 1, 'across'])).toEqual({ file: 'a.yaml', line: 4, column: 5 });
    expect(source(text).at(['tins', 9])).toEqual({ file: 'a.yaml', line: 3, column: 3 });
    expect(source(text).at(['eggs', 'size'])).toEqual({ file: 'a.yaml', line: 1, column: 1 });
  });

  it('does not count columns through escapes and folded lines', () => {
    expect(source('a: "x\\ty"').atText(['a'])).toBeNull();
    expect(source('a: one\n  two').atText(['a'])).toBeNull();
  });

  it('refuses what can hide, swell or repeat a value', () => {
    expect(codes('a: &x 1\nb: *x')).toEqual([
      ['yaml-alias', 1, 7],
      ['yaml-alias', 2, 4],
    ]);
    expect(codes('a: 1\na: 2')).toEqual([['yaml-key-repeated', 2, 1]]);
    expect(codes('a: !!binary aGk=')).toEqual([['yaml-tag', 1, 13]]);
    expect(codes('a: 1\n---\nb: 2')).toEqual([['yaml-many-documents', 2, 1]]);
    expect(codes('a: x\u202ey')).toEqual([['text-hidden-character', 1, 5]]);
    expect(codes('a: "x\\u202Ey"')).toEqual([['text-hidden-character', 1, 4]]);
    expect(codes('a: x\u0007y')).toEqual([['text-control-character', 1, 5]]);
    expect(codes('# nothing')).toEqual([['file-empty', 1, 1]]);
  });

  it('reads dates, times and yes as the text they are', () => {
    expect(source('a: 2026-11-01\nb: yes\nc: 12:30').value).toEqual({
      a: '2026-11-01',
      b: 'yes',
      c: '12:30',
    });
  });

  it('keeps a key named like a part of every object a plain key', () => {
    const { value } = source('__proto__: { x: 1 }');
    expect(Object.hasOwn(value as object, '__proto__')).toBe(true);
  });
});

describe('frontMatter', () => {
  it('counts lines and columns from the top of the file', () => {
    const parts = frontMatter(plainLines('\ufeff---\r\ntitle: X\r\n---\r\n\r\nText\r\n'), 'p.md');
    if (!parts.ok) throw new Error('not read');
    expect(parts.value.source.at(['title'])).toEqual({ file: 'p.md', line: 2, column: 8 });
    expect(parts.value.body).toBe('Text');
  });

  it('leaves rules of three dashes in the text alone', () => {
    const parts = frontMatter('---\ntitle: X\n---\nOne\n\n---\n\nTwo', 'p.md');
    expect(parts.ok ? parts.value.body : '').toBe('One\n\n---\n\nTwo');
  });
});
