/**
 * Everything the templates may write, worked out before Eleventy starts: no template computes, and no data is
 * computed twice for two pages.
 */
import type { Content } from '../domain/content.ts';
import type { Locale } from '../domain/kitchen.ts';
import { filesOfCards, filesOfFinishCards } from '../views/card-files.ts';
import { chartName } from '../views/chart-name.ts';
import type { ChartViews } from '../views/chart-views.ts';
import {
  type BuiltFile,
  type DownloadLink,
  type DownloadsView,
  downloadLinkIn,
  downloadsView,
  filesOfChart,
  filesOfFinishing,
  filesOfGuide,
  filesOfPortions,
} from '../views/downloads.ts';
import { finishingCharts } from '../views/finishing-chart.ts';
import type { FinishingChartView } from '../views/finishing-chart.types.ts';
import { flavourViews } from '../views/flavour.ts';
import { inHomeUnits } from '../views/home-units.ts';
import { homeChart } from '../views/in-ounces.ts';
import { labelMatrix } from '../views/label-matrix.ts';
import { sampleLabels } from '../views/label-samples.ts';
import { type PageLink, SECTION_LINKS, type SectionLink } from '../views/nav.ts';
import { portionsView } from '../views/portions.ts';
import { type RecipeView, recipeView } from '../views/recipe.ts';
import { tinsView } from '../views/tins.ts';
import { finishingWorkingView } from '../views/working-finishing.ts';
import { type AroundWords, aroundWordsFor } from '../wording/around/index.ts';
import { bakeWordsFor } from '../wording/bake/index.ts';
import { downloadWordsFor } from '../wording/downloads/index.ts';
import { finishingTableWordsFor } from '../wording/finishing/tables.ts';
import { finishingWorkingWordsFor } from '../wording/finishing/working.ts';
import { glossaryFor } from '../wording/glossary/index.ts';
import { labelWordsFor } from '../wording/label/index.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { portionsWordsFor } from '../wording/portions/index.ts';
import { type SiteWords, siteWordsFor } from '../wording/site/index.ts';
import { tinWordsFor } from '../wording/tins/index.ts';
import {
  type FindPage,
  findPage,
  type GlossaryPage,
  glossaryPage,
  type OfflinePage,
  offlinePage,
} from './around/around-pages.ts';
import { findables } from './around/find-index.ts';
import { type BakePage, type BakesPage, bakePage, bakesPage } from './bake-pages.ts';
import { type ChartPage, chartPage, type WorkingPage, workingPage } from './chart-page.ts';
import {
  type FinishingPage,
  type FinishPage,
  finishingPage,
  finishingWorkingPage,
  finishPages,
} from './finishing-pages.ts';
import { type FlavourPage, type FlavoursPage, flavourPage, flavoursPage } from './flavour-pages.ts';
import { type LabelPage, type LabelsPage, labelPage, labelsPage } from './label-pages.ts';
import { inlineLogo } from './logo.ts';
import { markdownHtml } from './markdown.ts';
import { type OrderPage, type OrdersPage, orderPages, type WeekPage } from './order-pages.ts';
import {
  chartsPage,
  type FreePageView,
  freePageLink,
  freePages,
  homePage,
  inOrder,
  type ListPage,
  missingPage,
  recipesPage,
  type TinPage,
  tinPages,
} from './overview-pages.ts';
import { type PlannerPage, plannerPage } from './planner-page.ts';
import { type PortionsPage, portionsPage } from './portions-page.ts';
import { flavouredCharts, homeCharts, structuredOf, toldChart } from './told-charts.ts';

export interface SiteInput {
  content: Content;
  charts: readonly ChartViews[];
  /** Files of the build that the site offers for download. */
  files: readonly BuiltFile[];
  /** The finishing charts; worked out from the content when left out. */
  finishing?: readonly FinishingChartView[];
  /** Text of the logo's SVG file, null when the house style has none. */
  logoSvg: string | null;
}

/** A section as its locale calls it. */
interface NamedSection extends SectionLink {
  text: string;
}

/** Pagination wants lists: a page that stands alone is a list of one. */
export interface SiteData {
  lang: Locale;
  kitchenName: string;
  place: string;
  edition: string;
  editionText: string;
  siteUrl: string | null;
  /** The same without a slash at its end; '' where it is not known. */
  base: string;
  themeColour: { light: string; dark: string };
  logo: string;
  icon: string | null;
  /** What the planner's page is called; null where there is none. */
  plannerTitle: string | null;
  /** Sentences of the templates. */
  words: SiteWords;
  nav: readonly NamedSection[];
  footerLinks: PageLink[];
  home: ListPage[];
  tins: ListPage[];
  tinPages: TinPage[];
  recipes: ListPage[];
  recipePages: (RecipeView & {
    methodHtml: string;
    structured: string;
    flavoured: PageLink[];
    cards: DownloadLink[];
  })[];
  charts: ListPage[];
  chartPages: ChartPage[];
  workingPages: WorkingPage[];
  bakes: BakesPage[];
  bakePages: BakePage[];
  flavours: FlavoursPage[];
  flavourPages: FlavourPage[];
  finishing: FinishingPage[];
  finishPages: FinishPage[];
  planner: PlannerPage[];
  glossary: GlossaryPage[];
  offline: OfflinePage[];
  find: FindPage[];
  around: AroundWords;
  /** The paper its prints are kept on a device in: the first of the kitchen's. */
  ownPaper: string;
  portions: PortionsPage[];
  labels: LabelsPage[];
  labelPages: LabelPage[];
  orders: OrdersPage[];
  orderPages: OrderPage[];
  weekPages: WeekPage[];
  freePages: FreePageView[];
  downloads: DownloadsView[];
  missing: ListPage[];
}

export const ICON_PATH = 'style/icon.svg';

/** The sections that have something in them. */
function sectionsOf({
  flavours,
  finishes,
  recipes,
  orders,
  publishesOrders,
}: Content): readonly SectionLink[] {
  return SECTION_LINKS.filter(
    ({ section }) =>
      (section !== 'planner' || recipes.length > 0) &&
      (section !== 'flavours' || flavours.length > 0) &&
      (section !== 'labels' || recipes.length > 0) &&
      (section !== 'orders' || (publishesOrders && orders.length > 0)) &&
      (section !== 'finishing' || finishes.length > 0),
  );
}

/** The data of a whole site; what can be found is told last, of all the rest. */
export function siteData(input: SiteInput): SiteData {
  const data = pagesData(input);
  return { ...data, find: [findPage(data.lang, findables(data))] };
}

function pagesData(input: SiteInput): SiteData {
  const { content, files } = input;
  const { kitchen, houseStyle } = content;
  const link = downloadLinkIn(downloadWordsFor(kitchen.locale));
  const home = <View>(view: View): View => inHomeUnits(view, kitchen);
  const flavours = home(flavourViews(content));
  const worked = input.finishing ?? finishingCharts(content);
  const finishing = home(worked);
  const charts = input.charts.map(toldChart);
  const guides = home(input.charts.flatMap(({ guide }) => guide ?? []));
  const words = wordsFor(kitchen.locale);
  const site = siteWordsFor(kitchen.locale);
  const portions = home(portionsView(content));
  const portionsWords = portionsWordsFor(kitchen.locale);
  const tables = finishingTableWordsFor(kitchen.locale);
  const finishingWords = finishingWorkingWordsFor(kitchen.locale);
  const recipes = home(content.recipes.map((recipe) => recipeView(recipe, content)));
  const tins = home(tinsView(kitchen, homeCharts(input.charts, kitchen)));
  const { list: tinList, pages } = tinPages(
    tins,
    portions.rows.length === 0 ? null : { path: 'portions.html', text: portionsWords.fromTins },
    site,
    tinWordsFor(kitchen.locale).scaleAlt,
  );
  const planner = content.recipes.length === 0 ? [] : [plannerPage(kitchen)];
  const labels = sampleLabels(content);
  const labelWords = labelWordsFor(kitchen.locale);
  const chartPages = charts.map(({ id, views }) =>
    chartPage(() => homeChart(views.chart, kitchen), filesOfChart(id, files).map(link), words),
  );
  return {
    lang: kitchen.locale,
    kitchenName: kitchen.name,
    place: kitchen.place,
    edition: kitchen.edition,
    editionText: words.date(kitchen.edition),
    siteUrl: kitchen.siteUrl ?? null,
    base: (kitchen.siteUrl ?? '').replace(/\/*$/, ''),
    themeColour: { light: houseStyle.colours.light.paper, dark: houseStyle.colours.dark.paper },
    logo: inlineLogo(input.logoSvg, houseStyle),
    icon: input.logoSvg === null ? null : ICON_PATH,
    plannerTitle: planner[0]?.words.title ?? null,
    words: site,
    nav: sectionsOf(content).map((link) => ({ ...link, text: site.frame.sections[link.section] })),
    footerLinks: [
      ...inOrder(content.pages).map(freePageLink),
      { path: 'glossary.html', text: glossaryFor(kitchen.locale).title },
    ],
    home: [homePage(content, recipes, tins)],
    tins: [tinList],
    tinPages: pages,
    recipes: [recipesPage(recipes, site)],
    recipePages: recipes.map((recipe) => ({
      ...recipe,
      methodHtml: markdownHtml(recipe.methodMarkdown, 1),
      structured: structuredOf(recipe.id, charts, content),
      flavoured: flavouredCharts(recipe.id, charts),
      cards: filesOfCards(recipe.id, files).map(link),
    })),
    charts: [chartsPage(chartPages, site)],
    chartPages,
    workingPages: [
      ...input.charts.map((views) => workingPage(views, site)),
      ...worked.map((view) =>
        finishingWorkingPage(finishingWorkingView(content, view), view, finishingWords),
      ),
    ],
    bakes: guides.length === 0 ? [] : [bakesPage(guides, bakeWordsFor(kitchen.locale))],
    bakePages: guides.map((guide) =>
      bakePage(guide, filesOfGuide(guide.id, files).map(link), bakeWordsFor(kitchen.locale)),
    ),
    flavours: flavours.length === 0 ? [] : [flavoursPage(flavours, site)],
    flavourPages: flavours.map(flavourPage),
    finishing: finishing.map((view) =>
      finishingPage(view, filesOfFinishing(view.id, files).map(link), finishingWords, tables),
    ),
    finishPages: finishing.flatMap((view) =>
      finishPages(view, (id) => filesOfFinishCards(id, files).map(link), finishingWords, site, tables),
    ),
    around: aroundWordsFor(kitchen.locale),
    ownPaper: kitchen.paper[0] ?? 'A4',
    glossary: [glossaryPage(kitchen.locale)],
    offline: [offlinePage(kitchen.locale)],
    find: [],
    planner,
    portions:
      portions.rows.length === 0
        ? []
        : [portionsPage(portions, filesOfPortions(files).map(link), portionsWords)],
    labels: labels.length === 0 ? [] : [labelsPage(labels, labelMatrix(content), files, labelWords, link)],
    labelPages: labels.map((label) => labelPage(label, files, labelWords, link)),
    ...orderPages(content, files),
    freePages: freePages(content),
    downloads: [
      downloadsView(
        charts.map((chart) => ({ id: chart.id, name: chartName(chart) })),
        files,
        downloadWordsFor(kitchen.locale),
        content.finishes,
      ),
    ],
    missing: [missingPage(site)],
  };
}
