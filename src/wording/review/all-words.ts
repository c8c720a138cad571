/** All words of a locale by area: what a native speaker is asked to read. */
import type { Locale } from '../../domain/kitchen.ts';
import { aroundWordsFor } from '../around/index.ts';
import { bakeWordsFor } from '../bake/index.ts';
import { bakeWorkingWordsFor } from '../bake/working.ts';
import { bookletWordsFor } from '../booklet/index.ts';
import { downloadWordsFor } from '../downloads/index.ts';
import { finishCardWordsFor } from '../finish-card/index.ts';
import { finishingWordsFor } from '../finishing/index.ts';
import { finishingTableWordsFor } from '../finishing/tables.ts';
import { finishingWorkingWordsFor } from '../finishing/working.ts';
import { flavourWordsFor } from '../flavour/index.ts';
import { glossaryFor } from '../glossary/index.ts';
import { imprintWordsFor } from '../imprint/index.ts';
import { labelWordsFor } from '../label/index.ts';
import { templateWordsFor } from '../lining-template/index.ts';
import { templateLabelsFor } from '../lining-template/sheet-words.ts';
import { wordsFor } from '../locales/index.ts';
import { workingWordsFor } from '../locales/working.ts';
import { orderWordsFor } from '../orders/index.ts';
import { planWordsFor } from '../plan/index.ts';
import { plannerWordsFor } from '../planner/index.ts';
import { portionsWordsFor } from '../portions/index.ts';
import { cardWordsFor } from '../recipe-card/index.ts';
import { labelsFor } from '../sheets/index.ts';
import { siteWordsFor } from '../site/index.ts';
import { stackWordsFor } from '../stacks/index.ts';
import { tilingWordsFor } from '../tiling/index.ts';
import { timetableWordsFor } from '../timetable/index.ts';
import { tinWordsFor } from '../tins/index.ts';
import { wallWordsFor } from '../wall/index.ts';

/** The words of a locale, area by area. */
export const allWords = (locale: Locale): Record<string, unknown> => ({
  around: aroundWordsFor(locale),
  bake: bakeWordsFor(locale),
  'bake working': bakeWorkingWordsFor(locale),
  booklet: bookletWordsFor(locale),
  cards: cardWordsFor(locale),
  chart: wordsFor(locale),
  downloads: downloadWordsFor(locale),
  'finish cards': finishCardWordsFor(locale),
  finishing: finishingWordsFor(locale),
  'finishing tables': finishingTableWordsFor(locale),
  'finishing working': finishingWorkingWordsFor(locale),
  flavours: flavourWordsFor(locale),
  glossary: glossaryFor(locale),
  imprint: imprintWordsFor(locale),
  labels: labelWordsFor(locale),
  'lining templates': templateWordsFor(locale),
  'lining sheets': templateLabelsFor(locale),
  orders: orderWordsFor(locale),
  plans: planWordsFor(locale),
  planner: plannerWordsFor(locale),
  portions: portionsWordsFor(locale),
  sheets: labelsFor(locale),
  site: siteWordsFor(locale),
  stacks: stackWordsFor(locale),
  tiling: tilingWordsFor(locale),
  timetables: timetableWordsFor(locale),
  tins: tinWordsFor(locale),
  walls: wallWordsFor(locale),
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
