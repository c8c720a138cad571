/** Everything a card says besides weights and method, in order, and how pressing it is that the front says it. */
import type { CardTin } from '../../views/recipe-card.types.ts';
import type { Block } from '../sheet/strip.ts';
import type { CardParts } from './card-parts.ts';
import {
  allergenBlocks,
  basisBlocks,
  cautionBlocks,
  factLines,
  ovenLines,
  readyBlock,
  summaryBlock,
  warningBlocks,
} from './card-words.ts';
import type { Item } from './fitting.ts';

type Said = (parts: CardParts) => Block[];

/** The recipe in a sentence and its oven, height and eggs. */
export const summaryItem: Item = {
  rank: 3,
  otherwise: 'left out',
  blocks: (parts) => [summaryBlock(parts)],
};

export const factsItem: Item = { rank: 0, otherwise: 'before', blocks: factLines };

/** What may hurt someone or spoil the cake: in front wherever it can be. */
export function pressingItems(tins: readonly CardTin[]): Item[] {
  const item = (blocks: Said): Item => ({ rank: 1, otherwise: 'before', blocks });
  return [item((parts) => warningBlocks(parts, tins)), item(allergenBlocks)];
}

/** The oven and the cautions; `inTable` when the table already has the oven. */
export function lateItems(tins: readonly CardTin[], inTable: boolean): Item[] {
  const item = (rank: number, blocks: Said): Item => ({ rank, otherwise: 'after', blocks });
  return [
    inTable ? item(4, basisBlocks) : item(2, (parts) => ovenLines(parts, tins)),
    item(5, (parts) => [readyBlock(parts)]),
    item(6, cautionBlocks),
  ];
}
