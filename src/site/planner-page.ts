/** The planner's page: what stands there before its script runs, and for those without scripts. */
import type { Kitchen } from '../domain/kitchen.ts';
import { type PageHead, pageHead } from '../views/nav.ts';
import { type PlannerWords, plannerWordsFor } from '../wording/planner/index.ts';
import { PLANNER_DATA, PLANNER_SCRIPT } from './planner-assets.ts';

export interface PlannerPage {
  head: PageHead;
  words: PlannerWords;
}

export function plannerPage({ locale }: Kitchen): PlannerPage {
  const words = plannerWordsFor(locale);
  return {
    head: pageHead({
      path: 'planner.html',
      text: words.title,
      description: words.description,
      section: 'planner',
      sheets: ['planner.css'],
      scripts: [PLANNER_DATA, PLANNER_SCRIPT],
    }),
    words,
  };
}
