/** The words of the site's own pages, page by page. A missing key does not compile. */

/** The parts of the site that have a name of their own. */
export type SectionName =
  | 'home'
  | 'planner'
  | 'charts'
  | 'recipes'
  | 'flavours'
  | 'finishing'
  | 'bakes'
  | 'tins'
  | 'labels'
  | 'orders'
  | 'downloads'
  | 'find';

/** What stands around every page. */
export interface FrameWords {
  skip: string;
  sections: Record<SectionName, string>;
  sectionsLabel: string;
  crumbsLabel: string;
  edition: string;
  caution: string;
  check: string;
}

/** Of a table that can be sorted; 'Sorted by batter, smallest first'. */
export interface SortWords {
  by: string;
  hint: string;
  ascending: string;
  descending: string;
  done: string;
}

export interface ChartPageWords {
  place: string;
  /** From the page of bake times back to the chart. */
  ovenTimes: string;
  /** The page's title. */
  title: (chart: string) => string;
  finishedHeight: string;
  eggs: string;
  provenBy: string;
  print: (file: string) => string;
  recipe: string;
  cautions: string;
  forEachTin: string;
  caption: (hasEggs: boolean) => string;
  tin: string;
  batter: string;
  rawFill: string;
  surplus: string;
  working: string;
  why: string;
  whyOf: (tin: string, count: string) => string;
  exact: (count: string) => string;
  poured: (grams: string, several: boolean) => string;
  ladder: string;
  ladderLead: string;
  ladderCaption: string;
  fills: string;
  fillsNone: string;
  nothingLeft: string;
  gramsLeft: (weight: string) => string;
  gramsShort: (weight: string) => string;
  files: string;
  howToRead: string;
}

export interface WorkingPageWords {
  description: (recipe: string) => string;
  lead: string;
  back: string;
  tinsHere: string;
  goToTin: string;
  shared: string;
  row: string;
}

export interface RecipePageWords {
  toChart: string;
  toLabel: string;
  bowl: string;
  caption: (batter: string, eggs: string) => string;
  ingredient: string;
  amount: string;
  method: string;
  proven: string;
  provenAbout: string;
  tins: string;
  finishedHeight: string;
  batter: string;
  noted: string;
  flavoured: string;
  flavouredAbout: string;
  cards: string;
  cardsAbout: (flavours: boolean) => string;
  tinChart: string;
}

export interface FlavourPageWords {
  changes: string;
  why: string;
  inRecipe: (recipe: string) => string;
  chart: string;
  plainRecipe: string;
  caption: (before: string, after: string) => string;
  ingredient: string;
  plain: string;
  flavoured: string;
  change: string;
}

export interface FinishingPageWords {
  method: string;
  toAll: string;
  madeOf: string;
  howToRead: string;
  toCharts: string;
  tin: string;
  /** Takes what is made beyond what goes on the cake; null where nothing is. */
  /** `poured`: what is spare runs off the cake. */
  partsAbout: (spare: string | null, poured: boolean) => string;
  card: string;
  cardAbout: string;
  make: string;
  onTheCake: string;
  description: (finish: string) => string;
}

export interface TinPageWords {
  toFills: string;
  paper: string;
  fills: string;
  recipe: string;
  eggs: string;
  batter: string;
  rawFill: string;
  more: string;
  weights: string;
  weightsOf: (recipe: string) => string;
  measured: string;
  unmeasured: string;
}

/** Pages that lead to others. */
export interface ListPageWords {
  home: {
    title: string;
    description: (kitchen: string, place: string) => string;
    lead: (recipes: string, tins: string) => string;
    toChart: string;
    nest: string;
    nestCaption: string;
    toTins: string;
    recipes: string;
    chart: string;
    chartOf: (recipe: string) => string;
    recipe: string;
    recipeOf: (recipe: string) => string;
    first: string;
    toPrint: string;
  };
  recipes: { title: string; description: string; lead: string };
  charts: { title: string; description: string; lead: string };
  flavours: { title: string; description: string };
  downloads: { lead: string; what: string; files: string; empty: string };
  missing: { title: string; lead: string; home: string; before: string; after: string };
}

/** A recipe in short: how, how hot, how high, in how many layers. */
export interface RecipeFactWords {
  method: string;
  oven: string;
  ovenOr: (plain: string, fan: string) => string;
  finishedHeight: string;
  layers: string;
  notCut: string;
  cutInto: (layers: number) => string;
  eggsAre: (size: string) => string;
  withoutEggs: string;
  withoutShells: (weight: string) => string;
  inShort: (method: string, heat: string, height: string) => string;
}

export interface SiteWords extends ListPageWords {
  frame: FrameWords;
  sort: SortWords;
  chart: ChartPageWords;
  working: WorkingPageWords;
  recipe: RecipePageWords;
  recipeFacts: RecipeFactWords;
  flavour: FlavourPageWords;
  finishing: FinishingPageWords;
  tin: TinPageWords;
}
