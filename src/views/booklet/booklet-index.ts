/** The index: every tin and every ingredient that the booklet holds, and the places where they stand. */
import type { Content } from '../../domain/content.ts';
import { finishAnchor } from './anchors.ts';
import type { BookletView, IndexEntry } from './booklet.types.ts';

/** Names in the order of their letters, capitals and small ones alike. */
function byName(a: IndexEntry, b: IndexEntry): number {
  const [one, other] = [a.name.toLowerCase(), b.name.toLowerCase()];
  return one === other ? (a.id < b.id ? -1 : 1) : one < other ? -1 : 1;
}

/** Entries that lead anywhere; placeholders are left out. */
const found = (entries: IndexEntry[]): IndexEntry[] =>
  entries.filter(({ anchors }) => anchors.length > 0).sort(byName);

export type IndexedView = Omit<BookletView, 'index'>;

function placesOfTin(tinId: string, view: IndexedView): string[] {
  const tables = [...(view.finishing?.tables ?? []), ...view.reference];
  return [
    ...view.recipes.flatMap(({ rows, bakes }) =>
      [...rows, ...bakes].filter((row) => row.tinId === tinId).map(({ anchor }) => anchor),
    ),
    ...tables.flatMap(({ anchors }) => anchors[tinId] ?? []),
    ...view.tins.filter(({ id }) => id === tinId).map(({ anchor }) => anchor),
  ];
}

function placesOfIngredient(id: string, view: IndexedView, { finishes }: Content): string[] {
  const inFlavours = view.flavours.flatMap(({ changes }) => changes.flatMap(({ lines }) => lines));
  const inFinishes = finishes.filter(({ parts }) => parts.some(({ ingredientId }) => ingredientId === id));
  return [
    ...[...view.recipes.flatMap(({ formula }) => formula), ...inFlavours]
      .filter((line) => line.id === id)
      .map(({ anchor }) => anchor),
    ...(view.finishing === null ? [] : inFinishes.map((finish) => finishAnchor(finish.id))),
  ];
}

/** Terms in alphabetical order. */
export function bookletIndex(view: IndexedView, content: Content): BookletView['index'] {
  return {
    tins: found(
      view.tins.map(({ id, name }) => ({ id, name, anchors: [...new Set(placesOfTin(id, view))] })),
    ),
    ingredients: found(
      content.ingredients.map(({ id, name }) => ({
        id,
        name,
        anchors: placesOfIngredient(id, view, content),
      })),
    ),
  };
}
