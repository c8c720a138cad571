import { describe, expect, it } from 'vitest';
import { lazyPage } from '../../src/site/lazy-page.ts';

describe('a page that is put together when it is read', () => {
  it('is made once while it is read, and again after another page; it says the same', () => {
    const made: string[] = [];
    const pageOf = (id: string) =>
      lazyPage({ id }, ['rows', 'note'], () => {
        made.push(id);
        return { rows: [id, id], note: `of ${id}` };
      });
    const [one, other] = [pageOf('one'), pageOf('other')];
    expect(made).toEqual([]);
    expect(one.note).toBe('of one');
    expect(one.rows).toBe(one.rows);
    const text = '{"id":"one","rows":["one","one"],"note":"of one"}';
    expect(JSON.stringify(one)).toBe(text);
    expect(made).toEqual(['one']);
    expect(other.rows).toEqual(['other', 'other']);
    expect(JSON.stringify(one)).toBe(text);
    expect(made).toEqual(['one', 'other', 'one']);
  });
});
