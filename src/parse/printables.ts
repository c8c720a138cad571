/** `printables` and `booklet` in kitchen.yaml. They name things of other files, so they are read after those. */
import type { PaperName } from '../domain/kitchen.ts';
import { CARD_SIZES, PRINT_KINDS, type Printable, type PrintKind, WALL_SIZES } from '../domain/printable.ts';
import {
  FINISHES,
  FLAVOURS,
  type KnownNames,
  type NamedKind,
  ORDERS,
  RECIPES,
  readNames,
  TINS,
} from './known-names.ts';
import { parseId } from './names.ts';
import { error } from './problems.ts';
import { quote } from './quote.ts';
import { present, type YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

/** What printables may name. */
export interface PrintableNames {
  recipes: KnownNames;
  flavours: KnownNames;
  tins: KnownNames;
  finishes: KnownNames;
  orders: KnownNames;
}

/** Kinds that come in the sizes of cards. */
const CARDS: readonly PrintKind[] = ['recipe-card', 'finish-card'];

const PAPERS: readonly PaperName[] = ['A4', 'Letter'];

function some<T extends string>(
  words: readonly T[],
  written: readonly string[] | undefined,
): T[] | undefined {
  return written === undefined ? undefined : words.filter((word) => written.includes(word));
}

function readPrintable(
  reader: YamlReader,
  path: YamlPath,
  print: PrintKind,
  names: PrintableNames,
): Printable {
  const list = (key: string, kind: NamedKind, known: KnownNames): string[] | undefined =>
    reader.has(...path, key) ? readNames(reader, [...path, key], kind, known) : undefined;
  const optional = present<Printable>({
    name: reader.parsed(parseId, ...path, 'name'),
    recipeIds: list('recipes', RECIPES, names.recipes),
    flavourIds: list('flavours', FLAVOURS, names.flavours),
    tinIds: list('tins', TINS, names.tins),
    finishIds: list('finishes', FINISHES, names.finishes),
    orderIds: list('orders', ORDERS, names.orders),
    papers: some(PAPERS, reader.texts(...path, 'paper')),
    cardSizes: CARDS.includes(print) ? some(CARD_SIZES, reader.texts(...path, 'sizes')) : undefined,
    wallSizes: print === 'wall-reference' ? some(WALL_SIZES, reader.texts(...path, 'sizes')) : undefined,
    mass: reader.word(['g', 'oz'] as const, ...path, 'mass'),
  } as { [K in keyof Printable]: Printable[K] | undefined });
  return { print, ...optional };
}

/** Two entries of one kind need names that differ, or one's files would take the other's place. */
function checkRepeated(reader: YamlReader, printables: readonly Printable[]): void {
  printables.forEach(({ print, name }, index) => {
    const earlier = printables.findIndex((other) => other.print === print && other.name === name);
    if (earlier === index) return;
    const message =
      name === undefined
        ? `Entry ${earlier + 1} already prints '${print}' without a name of its own`
        : `Entry ${earlier + 1} already prints '${print}' by the name ${quote(name)}`;
    const hint = "Add 'name: my-four' to one of the two, so that their files differ.";
    reader.report(error('printable-repeated', message, hint), 'printables', index);
  });
}

/** What the kitchen wants printed; null for everything. Problems are kept in the reader. */
export function readPrintables(reader: YamlReader, names: PrintableNames): Printable[] | null {
  if (!reader.has('printables')) return null;
  const printables: Printable[] = [];
  for (let index = 0; index < reader.items('printables'); index += 1) {
    const print = reader.word(PRINT_KINDS, 'printables', index, 'print');
    if (print !== undefined) printables.push(readPrintable(reader, ['printables', index], print, names));
  }
  checkRepeated(reader, printables);
  return printables;
}
