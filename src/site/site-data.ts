/**
 * Everything the templates may write, worked out before Eleventy starts: no template computes, and no data is
 * computed twice for two pages.
 */
import type { Content, FreePage } from '../domain/content.ts';
import type { ChartViews } from '../views/chart-views.ts';
import {
  type BuiltFile,
  type DownloadsView,
  downloadLink,
  downloadsView,
  filesOf,
} from '../views/downloads.ts';
import {
  freePagePath,
  type PageHead,
  type PageLink,
  pageHead,
  SECTION_LINKS,
  type SectionLink,
} from '../views/nav.ts';
import { type RecipeView, recipeView } from '../views/recipe.ts';
import { type TinsView, type TinView, tinsView } from '../views/tins.ts';
import { formatDate } from '../wording/date.ts';
import { countInWords } from '../wording/eggs.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { type ChartPage, chartPage, type WorkingPage, workingPage } from './chart-page.ts';
import { inlineLogo } from './logo.ts';
import { markdownHtml } from './markdown.ts';
import { measuredDrawing } from './measured-drawing.ts';
import { scaleBar } from './scale-bar.ts';
import { commonFrame, framedDrawing, nestedPlans } from './tin-drawing.ts';

export interface SiteInput {
  content: Content;
  charts: readonly ChartViews[];
  /** Files of the build that the site offers for download. */
  files: readonly BuiltFile[];
  /** Text of the logo's SVG file, null when the house style has none. */
  logoSvg: string | null;
}

interface TinPage extends TinView {
  drawing: string;
  drawingCaption: string;
}

interface ListPage {
  head: PageHead;
}

/** Pagination wants lists: a page that stands alone is a list of one. */
export interface SiteData {
  lang: string;
  kitchenName: string;
  place: string;
  edition: string;
  editionText: string;
  siteUrl: string | null;
  themeColour: { light: string; dark: string };
  logo: string;
  icon: string | null;
  nav: readonly SectionLink[];
  footerLinks: PageLink[];
  home: ListPage[];
  tins: ListPage[];
  tinPages: TinPage[];
  recipes: ListPage[];
  recipePages: (RecipeView & { methodHtml: string })[];
  charts: ListPage[];
  chartPages: ChartPage[];
  workingPages: WorkingPage[];
  freePages: (ListPage & { html: string; next: PageLink })[];
  downloads: DownloadsView[];
  missing: ListPage[];
}

export const ICON_PATH = 'style/icon.svg';

const freePageLink = (page: FreePage): PageLink => ({ path: freePagePath(page.id), text: page.title });

const inOrder = (pages: readonly FreePage[]): FreePage[] =>
  [...pages].sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1));

function homePage({ content, charts }: SiteInput, recipes: readonly RecipeView[], tins: TinsView): ListPage {
  const { kitchen } = content;
  const words = wordsFor(kitchen.locale);
  const pictures = [...tins.tins].reverse().map((tin) => tin.picture);
  const view = {
    head: pageHead({
      path: 'index.html',
      text: 'Tin charts and recipes',
      description: `Batter, whole eggs and weights for every tin of ${kitchen.name}, ${kitchen.place}.`,
      section: 'home',
    }),
    lead: `${countInWords(charts.length, words)} cakes in ${countInWords(kitchen.tins.length, words)} sizes of tin. For each: how many eggs, how much batter, what to weigh.`,
    nest: nestedPlans(pictures, 'The plans of all the tins, drawn to one scale on one centre'),
    nestCaption: 'Every tin on the shelf, drawn on one centre to one scale.',
    recipes,
    pages: inOrder(content.pages).map(freePageLink),
  };
  return view;
}

function tinPages(tins: TinsView): { list: ListPage; pages: TinPage[] } {
  const frame = commonFrame(tins.tins.map((tin) => tin.picture));
  const shown = tins.tins.map((tin) => ({
    ...tin,
    drawing: framedDrawing(tin.picture, frame),
    volumeText: tin.sizeText.includes(tin.volumeText) ? '' : tin.volumeText,
  }));
  const pages = tins.tins.map((tin) => ({
    ...tin,
    drawing: measuredDrawing(tin.picture, tin.unit),
    drawingCaption: tin.picture.plan
      ? 'Inside measures: plan above, side below. Broken lines are centre lines and hidden edges.'
      : 'Known only by the water it holds: the depth is measured, the width is not.',
  }));
  const list = { ...tins, tins: shown, scaleBar: scaleBar(frame.widthMm) };
  return { list, pages };
}

function recipesPage(recipes: readonly RecipeView[]): ListPage {
  const head = pageHead({
    path: 'recipes.html',
    text: 'Recipes',
    description: 'Every recipe with its formula, method and proven bakes.',
    section: 'recipes',
  });
  return { head, ...{ recipes } };
}

function chartsPage(pages: readonly ChartPage[]): ListPage {
  const head = pageHead({
    path: 'charts.html',
    text: 'Tin charts',
    description: 'Batter, whole eggs and weights for every tin, cake by cake.',
    section: 'charts',
  });
  const charts = pages.map(({ head: { path }, chart, print, files }) => ({
    path,
    name: [chart.recipe.name, ...chart.flavours.map((flavour) => flavour.name)].join(', '),
    summary: chart.summary,
    factsText: `${chart.finishedHeightText}. ${chart.eggSizeText}.`,
    files: print ? [print, ...files] : files,
  }));
  return { head, ...{ charts } };
}

function freePages(content: Content): SiteData['freePages'] {
  const ordered = inOrder(content.pages);
  return ordered.map((page, index) => {
    const next = ordered[index + 1];
    return {
      head: pageHead({ ...freePageLink(page), description: page.title, section: 'pages' }),
      html: markdownHtml(page.markdown),
      next: next ? freePageLink(next) : { path: 'charts.html', text: 'Open a tin chart' },
    };
  });
}

function missingPage(): ListPage {
  const head = pageHead({
    path: '404.html',
    text: 'No page here',
    description: 'No page here',
    section: 'pages',
  });
  return { head };
}

/** The data of a whole site. */
export function siteData(input: SiteInput): SiteData {
  const { content, files } = input;
  const charts = input.charts.map(({ chart }) => chart);
  const { kitchen, houseStyle } = content;
  const words = wordsFor(kitchen.locale);
  const chartIds = charts.map((chart) => chart.id);
  const recipes = content.recipes.map((recipe) => recipeView(recipe, content));
  const tins = tinsView(kitchen, charts);
  const { list: tinList, pages } = tinPages(tins);
  const chartPages = charts.map((chart) =>
    chartPage(chart, filesOf(chart.id, files, chartIds).map(downloadLink), words),
  );
  return {
    lang: kitchen.locale,
    kitchenName: kitchen.name,
    place: kitchen.place,
    edition: kitchen.edition,
    editionText: formatDate(kitchen.edition),
    siteUrl: kitchen.siteUrl ?? null,
    themeColour: { light: houseStyle.colours.light.paper, dark: houseStyle.colours.dark.paper },
    logo: inlineLogo(input.logoSvg, houseStyle),
    icon: input.logoSvg === null ? null : ICON_PATH,
    nav: SECTION_LINKS,
    footerLinks: inOrder(content.pages).map(freePageLink),
    home: [homePage(input, recipes, tins)],
    tins: [tinList],
    tinPages: pages,
    recipes: [recipesPage(recipes)],
    recipePages: recipes.map((recipe) => ({ ...recipe, methodHtml: markdownHtml(recipe.methodMarkdown, 1) })),
    charts: [chartsPage(chartPages)],
    chartPages,
    workingPages: input.charts.map(({ chart, working }) => workingPage(working, chart)),
    freePages: freePages(content),
    downloads: [
      downloadsView(
        charts.map(({ id, recipe }) => ({ id, name: recipe.name })),
        files,
      ),
    ],
    missing: [missingPage()],
  };
}
