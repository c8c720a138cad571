/** The pages about labels: allergens at a glance with all label texts, and one page for each label. */
import { type BuiltFile, type DownloadLink, filesOfLabel, filesOfLabelSheets } from '../views/downloads.ts';
import type { LabelView, SampleLabel } from '../views/label.types.ts';
import type { LabelMatrix } from '../views/label-matrix.ts';
import { labelPath, type PageHead, pageHead, recipePath } from '../views/nav.ts';
import type { LabelWords } from '../wording/label/index.ts';

export interface LabelsPage {
  head: PageHead;
  words: LabelWords['page'];
  draft: string;
  matrix: LabelMatrix;
  labels: { path: string; name: string; allergensText: string; refused: boolean }[];
  sheets: { name: string; file: DownloadLink }[];
}

export interface LabelPage {
  head: PageHead;
  words: LabelWords['page'];
  foodName: string;
  label: LabelView | null;
  refusals: SampleLabel['refusals'];
  facts: { label: string; text: string }[];
  recipePath: string;
  files: DownloadLink[];
}

const sheetName = (path: string): string =>
  path
    .replace(/^.*\//, '')
    .replace(/\.pdf$/, '')
    .replaceAll('-', ' ');

/** The page of all labels. */
export function labelsPage(
  samples: readonly SampleLabel[],
  matrix: LabelMatrix,
  files: readonly BuiltFile[],
  words: LabelWords,
  link: (file: BuiltFile) => DownloadLink,
): LabelsPage {
  return {
    head: pageHead({
      path: 'labels.html',
      text: words.page.title,
      description: words.page.lead,
      section: 'labels',
    }),
    words: words.page,
    draft: words.draft,
    matrix,
    labels: samples.map(({ id, foodName, view }) => ({
      path: labelPath(id),
      name: foodName,
      allergensText:
        view === null ? words.refused : `${words.contains} ${view.allergens.join(', ') || words.noneKnown}`,
      refused: view === null,
    })),
    sheets: filesOfLabelSheets(files).map((file) => ({
      name: sheetName(file.path),
      file: link(file),
    })),
  };
}

function factsOf(view: LabelView | null, words: LabelWords): LabelPage['facts'] {
  if (view === null) return [];
  const { facts } = words.page;
  return [
    { label: facts.finished, text: `${view.finished.text}\u00a0g` },
    { label: facts.keeps, text: view.keepsText },
    { label: facts.storage, text: view.storageText },
  ];
}

/** The page of one label. */
export function labelPage(
  sample: SampleLabel,
  files: readonly BuiltFile[],
  words: LabelWords,
  link: (file: BuiltFile) => DownloadLink,
): LabelPage {
  const { id, foodName, recipe, view, refusals } = sample;
  return {
    head: pageHead({
      path: labelPath(id),
      text: words.page.labelOf(foodName),
      description: words.page.description(foodName),
      section: 'labels',
    }),
    words: words.page,
    foodName,
    label: view,
    refusals,
    facts: factsOf(view, words),
    recipePath: recipePath(recipe.id),
    files: filesOfLabel(id, files).map(link),
  };
}
