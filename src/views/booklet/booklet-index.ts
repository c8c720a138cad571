/** The index: every tin and every ingredient that the booklet holds, and the places where they stand. */
import type { Content } from '../../domain/content.ts';
import type { Named } from '../figure.ts';
import { finishAnchor } from './anchors.ts';
import type { BookletView, IndexEntry } from './booklet.types.ts';

/** Names in the order of their letters, capitals and small ones alike. */
function byName(a: IndexEntry, b: IndexEntry): number {
  const [one, other] = [a.name.toLowerCase(), b.name.toLowerCase()];
  return one === other ? (a.id < b.id ? -1 : 1) : one < other ? -1 : 1;
}

export type IndexedView = Omit<BookletView, 'index'>;

/** Places by the id of what stands there, in the order of the pages. */
class Places {
  readonly #byId = new Map<string, Set<string>>();

  add(id: string, anchor: string): void {
    const known = this.#byId.get(id);
    if (known) known.add(anchor);
    else this.#byId.set(id, new Set([anchor]));
  }

  /** Entries in alphabetical order; what stands nowhere is left out. */
  entries(named: readonly Named[]): IndexEntry[] {
    return named
      .flatMap(({ id, name }) => {
        const anchors = this.#byId.get(id);
        return anchors === undefined ? [] : [{ id, name, anchors: [...anchors] }];
      })
      .sort(byName);
  }
}

function placesOfTins(view: IndexedView): Places {
  const places = new Places();
  for (const { rows, bakes } of view.recipes)
    for (const { tinId, anchor } of [...rows, ...bakes]) places.add(tinId, anchor);
  for (const { anchors } of [...(view.finishing?.tables ?? []), ...view.reference])
    for (const [id, anchor] of Object.entries(anchors)) places.add(id, anchor);
  for (const { id, anchor } of view.tins) places.add(id, anchor);
  return places;
}

function placesOfIngredients(view: IndexedView, { finishes }: Content): Places {
  const places = new Places();
  for (const { formula } of view.recipes) for (const { id, anchor } of formula) places.add(id, anchor);
  for (const { changes } of view.flavours)
    for (const { lines } of changes) for (const { id, anchor } of lines) places.add(id, anchor);
  const told = new Set(view.finishing?.finishes.map(({ id }) => id));
  // What is bought as it is used has no ingredients to look up.
  for (const { id, parts } of finishes)
    if (told.has(id) && parts.length > 1)
      for (const { ingredientId } of parts) places.add(ingredientId, finishAnchor(id));
  return places;
}

/** Terms in alphabetical order. */
export const bookletIndex = (view: IndexedView, content: Content): BookletView['index'] => ({
  tins: placesOfTins(view).entries(view.tins),
  ingredients: placesOfIngredients(view, content).entries(content.ingredients),
});
