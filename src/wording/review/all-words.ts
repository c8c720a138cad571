/** All words of a locale by area: what a native speaker is asked to read. */
import type { Locale } from '../../domain/kitchen.ts';
import { aroundWordsFor } from '../around/index.ts';
import { bakeWordsFor } from '../bake/index.ts';
import { bakeWorkingWordsFor } from '../bake/working.ts';
import { bookletWordsFor } from '../booklet/index.ts';
import { finishingWordsFor } from '../finishing/index.ts';
import { finishingWorkingWordsFor } from '../finishing/working.ts';
import { flavourWordsFor } from '../flavour/index.ts';
import { glossaryFor } from '../glossary/index.ts';
import { labelWordsFor } from '../label/index.ts';
import { wordsFor } from '../locales/index.ts';
import { workingWordsFor } from '../locales/working.ts';
import { orderWordsFor } from '../orders/index.ts';
import { plannerWordsFor } from '../planner/index.ts';
import { portionsWordsFor } from '../portions/index.ts';
import { siteWordsFor } from '../site/index.ts';
import { stackWordsFor } from '../stacks/index.ts';
import { timetableWordsFor } from '../timetable/index.ts';

/** The words of a locale, area by area. */
export const allWords = (locale: Locale): Record<string, unknown> => ({
  around: aroundWordsFor(locale),
  bake: bakeWordsFor(locale),
  'bake working': bakeWorkingWordsFor(locale),
  booklet: bookletWordsFor(locale),
  chart: wordsFor(locale),
  finishing: finishingWordsFor(locale),
  'finishing working': finishingWorkingWordsFor(locale),
  flavours: flavourWordsFor(locale),
  glossary: glossaryFor(locale),
  labels: labelWordsFor(locale),
  orders: orderWordsFor(locale),
  planner: plannerWordsFor(locale),
  portions: portionsWordsFor(locale),
  site: siteWordsFor(locale),
  stacks: stackWordsFor(locale),
  timetables: timetableWordsFor(locale),
  working: workingWordsFor(locale),
});

/** Every sentence by its key, 'site.home.title'; what takes a value is told by its name alone. */
export function sentencesOf(words: unknown, key = ''): [string, string][] {
  if (typeof words === 'string') return [[key, words]];
  if (typeof words === 'function') return [[key, '(with a value in it)']];
  if (typeof words !== 'object' || words === null || words instanceof RegExp) return [];
  return Object.entries(words).flatMap(([name, one]) =>
    sentencesOf(one, key === '' ? name : `${key}.${name}`),
  );
}
