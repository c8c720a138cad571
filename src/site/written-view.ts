/** What a page's view says, as JSON: its hash, and the characters that its fonts must have. */
import { sha256 } from '../read/sha256.ts';
import { charactersOf } from './house-fonts.ts';

export interface WrittenView {
  hash: string;
  /** Once each. */
  characters: string;
}

/** Views are never changed: the same one says the same. */
const written = new WeakMap<object, WrittenView>();

/** The one whose text is being put together. */
let writing: object | null = null;

export function writtenView(view: object): WrittenView {
  const known = written.get(view);
  if (known !== undefined) return known;
  writing = view;
  const text = JSON.stringify(view);
  writing = null;
  const fresh = { hash: sha256(text), characters: charactersOf(text) };
  written.set(view, fresh);
  return fresh;
}

/** Of a view that was worked out because somebody read it: it need not be worked out again to be asked what it says. */
export function writeDown(view: object): void {
  if (view !== writing) writtenView(view);
}
