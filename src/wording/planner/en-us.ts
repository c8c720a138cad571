/** US English for the planner. */
import { enGbPlanner } from './en-gb.ts';
import type { PlannerWords } from './planner-words.ts';

const american = (text: string): string =>
  text
    .replace(/\btins\b/g, 'pans')
    .replace(/\bTins\b/g, 'Pans')
    .replace(/\btin\b/g, 'pan')
    .replaceAll('millimetres', 'millimeters')
    .replaceAll('Flavours', 'Flavors');

/** Every sentence of a tree of words, functions left as they are called. */
function turned<T>(words: T): T {
  if (typeof words === 'string') return american(words) as T;
  if (typeof words === 'function') {
    const say = words as unknown as (...parts: unknown[]) => string;
    return ((...parts: unknown[]) => american(say(...parts))) as T;
  }
  const entries = Object.entries(words as object).map(([key, value]) => [key, turned(value)]);
  return Object.fromEntries(entries) as T;
}

export const enUsPlanner: PlannerWords = turned(enGbPlanner);
