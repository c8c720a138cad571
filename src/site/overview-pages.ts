/** Pages that lead to others: home, the lists of tins, recipes and charts, the baker's free pages, the lost page. */
import type { Content, FreePage } from '../domain/content.ts';
import { freePagePath, type PageHead, type PageLink, pageHead } from '../views/nav.ts';
import type { RecipeView } from '../views/recipe.ts';
import type { TinsView, TinView } from '../views/tins.ts';
import { countInWords } from '../wording/eggs.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { plannerWordsFor } from '../wording/planner/index.ts';
import { type SiteWords, siteWordsFor } from '../wording/site/index.ts';
import type { TinWords } from '../wording/tins/index.ts';
import type { ChartPage } from './chart-page.ts';
import { markdownHtml } from './markdown.ts';
import { measuredDrawing } from './measured-drawing.ts';
import { scaleBar } from './scale-bar.ts';
import { commonFrame, framedDrawing, nestedPlans } from './tin-drawing.ts';

export interface ListPage {
  head: PageHead;
}

export interface TinPage extends TinView {
  drawing: string;
  drawingCaption: string;
}

export interface FreePageView extends ListPage {
  html: string;
  next: PageLink;
}

export const freePageLink = (page: FreePage): PageLink => ({ path: freePagePath(page.id), text: page.title });

export const inOrder = (pages: readonly FreePage[]): FreePage[] =>
  [...pages].sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1));

/** The first page: what there is, the tins on one centre, every recipe with its chart. */
export function homePage(content: Content, recipes: readonly RecipeView[], tins: TinsView): ListPage {
  const { kitchen } = content;
  const words = wordsFor(kitchen.locale);
  const { home } = siteWordsFor(kitchen.locale);
  const pictures = [...tins.tins].reverse().map((tin) => tin.picture);
  const view = {
    head: pageHead({
      path: 'index.html',
      text: home.title,
      description: home.description(kitchen.name, kitchen.place),
      section: 'home',
    }),
    lead: home.lead(countInWords(recipes.length, words), countInWords(kitchen.tins.length, words)),
    planText: plannerWordsFor(kitchen.locale).open,
    nest: nestedPlans(pictures, home.nest),
    nestCaption: home.nestCaption,
    recipes,
    pages: inOrder(content.pages).map(freePageLink),
  };
  return view;
}

/** The plate of all tins to one scale, and each tin large with its measures. */
export function tinPages(
  tins: TinsView,
  portions: PageLink | null,
  { tin: words }: SiteWords,
  scaleAlt: TinWords['scaleAlt'],
): { list: ListPage; pages: TinPage[] } {
  const frame = commonFrame(tins.tins.map((tin) => tin.picture));
  const shown = tins.tins.map((tin) => ({
    ...tin,
    drawing: framedDrawing(tin.picture, frame),
    volumeText: tin.sizeText.includes(tin.volumeText) ? '' : tin.volumeText,
  }));
  const pages = tins.tins.map((tin) => ({
    ...tin,
    drawing: measuredDrawing(tin.picture, tin.unit),
    drawingCaption: tin.picture.plan ? words.measured : words.unmeasured,
  }));
  const list = { ...tins, portions, tins: shown, scaleBar: scaleBar(frame.widthMm, scaleAlt) };
  return { list, pages };
}

/** The list of recipes. */
export function recipesPage(recipes: readonly RecipeView[], { recipes: words }: SiteWords): ListPage {
  const head = pageHead({
    path: 'recipes.html',
    text: words.title,
    description: words.description,
    section: 'recipes',
  });
  return { head, ...{ recipes } };
}

/** The list of charts, each with its sheets to print. */
export function chartsPage(pages: readonly ChartPage[], { charts: words }: SiteWords): ListPage {
  const head = pageHead({
    path: 'charts.html',
    text: words.title,
    description: words.description,
    section: 'charts',
  });
  const charts = pages.map(({ head: { path }, name, summary, factsText, print, files }) => ({
    path,
    name,
    summary,
    factsText,
    files: (print ? [print, ...files] : files).filter((file) => file.text.startsWith('PDF')),
  }));
  return { head, ...{ charts } };
}

/** The baker's own pages, each leading to the next. */
export function freePages(content: Content): FreePageView[] {
  const ordered = inOrder(content.pages);
  return ordered.map((page, index) => {
    const next = ordered[index + 1];
    return {
      head: pageHead({ ...freePageLink(page), description: page.title, section: 'pages' }),
      html: markdownHtml(page.markdown),
      next: next
        ? freePageLink(next)
        : { path: 'charts.html', text: siteWordsFor(content.kitchen.locale).home.toChart },
    };
  });
}

/** What a host shows for an address that is not there. */
export function missingPage({ missing: words }: SiteWords): ListPage {
  const head = pageHead({
    path: '404.html',
    text: words.title,
    description: words.title,
    section: 'pages',
  });
  return { head };
}
