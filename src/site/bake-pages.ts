/** The pages about time and heat: one per recipe, and the list of them. */
import type { BakeGuideView } from '../views/bake-guide.types.ts';
import type { DownloadLink } from '../views/downloads.ts';
import { bakePath, type PageHead, pageHead } from '../views/nav.ts';
import type { Plot } from '../views/plot/plot.types.ts';
import type { BakeWords } from '../wording/bake/index.ts';
import { plotSvg } from './plot-svg.ts';

export interface BakePage extends Omit<BakeGuideView, 'plots'> {
  head: PageHead;
  words: BakeWords['guide'];
  files: DownloadLink[];
  plots: {
    id: string;
    title: string;
    svg: string;
    caption: string;
    tableTitle: string;
    table: Plot['table'];
  }[];
}

export interface BakesPage {
  head: PageHead;
  words: BakeWords['list'];
  guides: { path: string; name: string; answerText: string | null; basisText: string }[];
}

/** The page of one recipe's guide. */
export function bakePage(view: BakeGuideView, files: DownloadLink[], words: BakeWords): BakePage {
  const head = pageHead({
    path: bakePath(view.id),
    text: view.title,
    description: `${view.title}. ${view.basisText}`,
    section: 'bakes',
  });
  const plots = view.plots.map((plot) => ({
    id: plot.id,
    title: plot.title,
    svg: plotSvg(plot),
    caption: plot.description,
    tableTitle: words.guide.tableOf(plot.title),
    table: plot.table,
  }));
  return { ...view, head, plots, files, words: words.guide };
}

/** The list of all guides. */
export function bakesPage(views: readonly BakeGuideView[], { list }: BakeWords): BakesPage {
  const head = pageHead({
    path: 'bakes.html',
    text: list.title,
    description: list.description,
    section: 'bakes',
  });
  const guides = views.map(({ id, recipe, answerText, basisText }) => ({
    path: bakePath(id),
    name: recipe.name,
    answerText,
    basisText,
  }));
  return { head, words: list, guides };
}
