/** The list of flavours and a page for each: what it changes, step by step and in grams. */
import type { FlavourView } from '../views/flavour.types.ts';
import { chartPath, flavourPath, type PageHead, pageHead, recipePath } from '../views/nav.ts';
import type { SiteWords } from '../wording/site/index.ts';

interface ChangePage {
  recipeName: string;
  recipePath: string;
  chartPath: string;
  lines: { name: string; before: string; after: string; change: string }[];
  totalBefore: string;
  totalAfter: string;
  facts: string[];
  cautions: { text: string }[];
  warnings: { message: string }[];
}

export interface FlavourPage {
  head: PageHead;
  name: string;
  summary: string;
  why: string;
  steps: string[];
  method: string | null;
  alsoText: string;
  changes: ChangePage[];
}

export interface FlavoursPage {
  head: PageHead;
  flavours: { name: string; summary: string; path: string; recipes: string }[];
}

const NONE = '–';

function changePage(change: FlavourView['changes'][number]): ChangePage {
  return {
    recipeName: change.recipe.name,
    recipePath: recipePath(change.recipe.id),
    chartPath: chartPath(change.chartId),
    lines: change.lines.map(({ name, before, after, change: by }) => ({
      name,
      before: before?.text ?? NONE,
      after: after?.text ?? NONE,
      change: by.text === '0' ? NONE : by.text,
    })),
    totalBefore: change.totalBefore.text,
    totalAfter: change.totalAfter.text,
    facts: [change.growthText, change.eggsText, change.wetText, change.allergenText].filter(
      (text) => text !== null,
    ),
    cautions: change.cautions,
    warnings: change.warnings,
  };
}

/** The page of one flavour. */
export function flavourPage(view: FlavourView): FlavourPage {
  return {
    head: pageHead({
      path: flavourPath(view.id),
      text: view.name,
      description: view.summary,
      section: 'flavours',
    }),
    name: view.name,
    summary: view.summary,
    why: view.why,
    steps: view.steps,
    method: view.method,
    alsoText: view.alsoText,
    changes: view.changes.map(changePage),
  };
}

/** The list of all flavours. */
export function flavoursPage(views: readonly FlavourView[], { flavours: words }: SiteWords): FlavoursPage {
  return {
    head: pageHead({
      path: 'flavours.html',
      text: words.title,
      description: words.description,
      section: 'flavours',
    }),
    flavours: views.map(({ id, name, summary, changes }) => ({
      name,
      summary,
      path: flavourPath(id),
      recipes: changes.map(({ recipe }) => recipe.name).join('; '),
    })),
  };
}
