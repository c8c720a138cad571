/** The booklet in two files for one paper: pages in reading order, and two to a sheet for folding. */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { BookletView } from '../views/booklet/booklet.types.ts';
import { bookletWordsFor } from '../wording/booklet/index.ts';
import { bookletForm } from './booklet/booklet-form.ts';
import { boundPages } from './booklet/bound-pages.ts';
import { foldedPages, gatheringsOf } from './imposition/folded-pages.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Metrics, Print } from './sheet/surface.ts';

/** Draws nothing yet: gives the pages for a renderer. */
export function bookletPrints(
  view: BookletView,
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
): Print[] {
  const words = bookletWordsFor(lang);
  const form = bookletForm(paper, style);
  const pages = boundPages({ view, form, words, lang, context: sheetContext(style, metrics) });
  const title = words.title(view.kitchenName);
  const reading = `to-read-${form.slug}`;
  return [
    { path: `booklet/${reading}`, title, lang, subject: words.subject(view.kitchenName), pages },
    {
      path: `booklet/to-fold-${paper.toLowerCase()}`,
      title: words.foldTitle(title, paper, `${reading}.pdf`),
      lang,
      subject: words.foldSubject(pages.length / 4, gatheringsOf(pages.length)),
      pages: foldedPages(pages, { sheet: form.sheet, thicknessMm: view.paperThicknessMm }),
    },
  ];
}
