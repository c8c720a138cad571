/** A stack as a part of its order's page: drawn, with the words around it. */
import type { Content } from '../domain/content.ts';
import type { OrderView } from '../views/order.types.ts';
import type { OrderWords } from '../wording/orders/index.ts';
import { type StackWords, stackWordsFor } from '../wording/stacks/index.ts';
import { stackSvg } from './stack-svg.ts';

export interface StackPart {
  /** The stack's drawing and the words around it; null where nothing is stacked. */
  stackDrawing: string | null;
  stackWords:
    | (Pick<StackWords, 'table' | 'supportsTitle' | 'stepsTitle'> & { footTop: StackWords['table']['tier'] })
    | null;
}

/** The part for one order's page. */
export function stackPart({ stack }: OrderView, { kitchen }: Content, words: OrderWords): StackPart {
  if (stack === null) return { stackDrawing: null, stackWords: null };
  const { table, supportsTitle, stepsTitle } = stackWordsFor(kitchen.locale);
  return {
    stackDrawing: stackSvg(stack),
    stackWords: { table, supportsTitle, stepsTitle, footTop: words.page.footTop },
  };
}
