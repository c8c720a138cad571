/** The flavours of the booklet: what each changes in the recipes that the booklet holds. */
import type { Content } from '../../domain/content.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { listInWords } from '../../wording/list.ts';
import { wordsFor } from '../../wording/locales/index.ts';
import { flavourViews } from '../flavour.ts';
import type { FlavourChange, FlavourView } from '../flavour.types.ts';
import { flavourAnchor, flavourLineAnchor } from './anchors.ts';
import type { BookletFlavour, BookletFlavourChange } from './booklet.types.ts';

function bookletChange(
  flavour: FlavourView,
  change: FlavourChange,
  words: BookletWords,
  and: string,
): BookletFlavourChange {
  const { recipe, lines, eggsText, wetText, growthText, allergenText, cautions, warnings } = change;
  const isChanged = (line: (typeof lines)[number]): boolean => line.change.text !== '0';
  const hasNews = change.allergensAdded.length + change.allergensLeftOut.length > 0;
  const unchanged = lines.filter((line) => !isChanged(line)).map(({ name }) => name.toLowerCase());
  return {
    recipe,
    lines: lines
      .filter(isChanged)
      .map((line) => ({ ...line, anchor: flavourLineAnchor(flavour.id, recipe.id, line.id) })),
    unchangedText: unchanged.length === 0 ? '' : words.flavours.unchanged(listInWords(unchanged, and)),
    eggsText,
    wetText,
    growthText: change.growth.value === 0 ? '' : growthText,
    allergenText: hasNews ? allergenText : '',
    cautions,
    warnings: warnings.map(({ message }) => message),
  };
}

/** Flavours that suit a recipe of the booklet, in the order of their ids. */
export function bookletFlavours(content: Content, words: BookletWords): BookletFlavour[] {
  const { and } = wordsFor(content.kitchen.locale);
  return flavourViews(content)
    .filter(({ changes }) => changes.length > 0)
    .map((flavour) => ({
      id: flavour.id,
      name: flavour.name,
      summary: flavour.summary,
      anchor: flavourAnchor(flavour.id),
      why: flavour.why,
      steps: flavour.steps,
      method: flavour.method,
      alsoText: flavour.alsoText,
      changes: flavour.changes.map((change) => bookletChange(flavour, change, words, and)),
    }));
}
