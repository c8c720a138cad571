/** The flavours and finishes of a content folder, each from a file of its own. */
import type { Finish } from '../domain/finish.ts';
import type { Flavour } from '../domain/flavour.ts';
import { parseFinishYaml } from '../parse/finishes.ts';
import { type FlavourContext, parseFlavourYaml } from '../parse/flavours.ts';
import type { Shelf } from '../parse/formula.ts';
import type { KnownNames } from '../parse/known-names.ts';
import { type Gathered, readEach } from './read-each.ts';

/** Every flavour, in the order of their ids. */
export function readFlavours(folder: string, context: FlavourContext): Promise<Gathered<Flavour>> {
  return readEach(folder, 'flavours', '.yaml', (text, file, id) => {
    const { flavour, problems } = parseFlavourYaml(text, file, id, context);
    return { item: flavour, problems };
  });
}

/** Every finish, in the order of their ids. */
export function readFinishes(folder: string, shelf: Shelf): Promise<Gathered<Finish>> {
  return readEach(folder, 'finishes', '.yaml', (text, file, id) => {
    const { finish, problems } = parseFinishYaml(text, file, id, shelf);
    return { item: finish, problems };
  });
}

/** What other files may name of what was gathered. */
export function namesOf({ items, ids }: Gathered<{ id: string }>): KnownNames {
  const sound = items.map(({ id }) => id);
  return { ids: sound, broken: ids.filter((id) => !sound.includes(id)) };
}
