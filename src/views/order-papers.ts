/**
 * Which papers does an order take off the shelf, and what for? Recipe cards by batter, finish cards by finish, the
 * templates of its tins, and its own sheets and labels: only those that the kitchen prints.
 */
import type { Content } from '../domain/content.ts';
import type { OrderPaperKind } from '../domain/order-paper.ts';
import type { Printable, PrintKind } from '../domain/printable.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { type OrderWords, orderWordsFor } from '../wording/orders/index.ts';
import { uncapitalised } from '../wording/sentence-case.ts';
import { finishPath, recipePath } from './nav.ts';
import type { OrderView } from './order.types.ts';
import type { OrderPaper } from './order-papers.types.ts';

export type PapersOrder = Pick<
  OrderView,
  'id' | 'tiers' | 'dummies' | 'batters' | 'finishes' | 'stack' | 'keeping'
>;

interface Shelf {
  order: PapersOrder;
  content: Content;
  words: OrderWords;
  and: string;
}

/** The folder below that of the kind, 'my-four/', of the first entry that covers it; null where nothing prints it. */
function folderOf(
  { printables }: Content,
  kind: PrintKind,
  covers: (entry: Printable) => boolean = () => true,
): string | null {
  if (printables === null) return '';
  const found = printables.find((entry) => entry.print === kind && covers(entry));
  if (found === undefined) return null;
  return found.name === undefined ? '' : `${found.name}/`;
}

const lists = (ids: readonly string[] | undefined, id: string): boolean => ids?.includes(id) ?? true;

const idsOf = (all: readonly { id: string }[]): string => all.map(({ id }) => id).join(' ');

interface Named {
  name: string;
}

/** 'bottom tier and top tier'; '' where it is for every cake. */
function forWhom(own: readonly Named[], all: readonly Named[], { and }: Shelf): string {
  if (own.length === all.length) return '';
  return listInWords(
    own.map(({ name }) => uncapitalised(name)),
    and,
  );
}

function recipeCards(shelf: Shelf): OrderPaper[] {
  const { order, content, words } = shelf;
  return order.batters.flatMap(({ id, recipe, flavours }): OrderPaper[] => {
    const folder = folderOf(
      content,
      'recipe-card',
      ({ recipeIds, flavourIds }) =>
        lists(recipeIds, recipe.id) && (flavourIds === undefined || flavourIds.join(' ') === idsOf(flavours)),
    );
    if (folder === null) return [];
    const own = order.tiers.filter(
      (tier) => tier.recipe.id === recipe.id && idsOf(tier.flavours) === idsOf(flavours),
    );
    return [
      {
        ...{ id: `recipe-card-${id}`, kind: 'recipe-card', kindText: words.papers.kinds['recipe-card'] },
        paperName: wordsFor(content.kitchen.locale).chart.title(
          recipe.name,
          flavours.map((flavour) => flavour.name),
        ),
        forText: forWhom(own, order.tiers, shelf),
        prints: [{ printName: '', stem: `recipe-cards/${folder}${recipe.id}` }],
        page: recipePath(recipe.id),
      },
    ];
  });
}

function finishCards(shelf: Shelf): OrderPaper[] {
  const { order, content, words } = shelf;
  const all = [...order.tiers, ...order.dummies];
  return order.finishes.flatMap(({ finish }): OrderPaper[] => {
    const folder = folderOf(content, 'finish-card', ({ finishIds }) => lists(finishIds, finish.id));
    if (folder === null) return [];
    const own = all.filter(({ finishes }) => finishes.some((one) => one.finish.id === finish.id));
    return [
      {
        ...{
          id: `finish-card-${finish.id}`,
          kind: 'finish-card',
          kindText: words.papers.kinds['finish-card'],
        },
        paperName: finish.name,
        forText: forWhom(own, all, shelf),
        prints: [{ printName: '', stem: `finish-cards/${folder}${finish.id}` }],
        page: finishPath(finish.id),
      },
    ];
  });
}

/** Tins of cups are lined with cases. */
function liningTemplates({ order, content, words, and }: Shelf): OrderPaper[] {
  const tins = content.kitchen.tins.filter(
    ({ id }) =>
      order.tiers.some(({ tin }) => tin.id === id) &&
      folderOf(content, 'lining-template', ({ tinIds }) => lists(tinIds, id)) !== null,
  );
  if (tins.length === 0) return [];
  return [
    {
      ...{ id: 'lining-template', kind: 'lining-template', kindText: words.papers.kinds['lining-template'] },
      paperName: null,
      forText: listInWords(
        tins.map(({ name }) => uncapitalised(name)),
        and,
      ),
      prints: tins.map(({ id, name }) => ({ printName: name, stem: `templates/${id}` })),
      page: null,
    },
  ];
}

function own(kind: OrderPaperKind, prints: OrderPaper['prints'], { words }: Shelf): OrderPaper {
  const kindText = words.papers.kinds[kind];
  return { id: kind, kind, kindText, paperName: null, forText: '', prints, page: null };
}

/** A stall's cakes are cut at home, by the guide that the day sheet names. */
function isSoldInPieces({ order, content }: Shelf): boolean {
  const asked = content.orders.find(({ id }) => id === order.id);
  const isCut = order.tiers.some(({ portions, small }) => portions !== null && small === null);
  return asked?.handOver.place === 'sold at a stall' && asked.portions !== undefined && isCut;
}

/** How it is cut, what is drawn of its stack, and its labels where it has any. */
function sheets(shelf: Shelf): OrderPaper[] {
  const { order, content, words } = shelf;
  const { id, stack, tiers, keeping } = order;
  const stacked = folderOf(content, 'stack-sheet', ({ orderIds }) => lists(orderIds, id));
  const labelled = folderOf(content, 'label', ({ recipeIds }) =>
    tiers.every(({ recipe }) => lists(recipeIds, recipe.id)),
  );
  const guide = isSoldInPieces(shelf) ? folderOf(content, 'cutting-guide') : null;
  const labels = keeping.some(({ refusals }) => refusals.length === 0) ? labelled : null;
  return [
    ...(guide === null
      ? []
      : [own('cutting-guide', [{ printName: '', stem: `cutting-guides/${guide}portions` }], shelf)]),
    ...(stack === null || stacked === null
      ? []
      : [own('stack-sheet', [{ printName: '', stem: `orders/${stacked}${id}-stack-sheet` }], shelf)]),
    ...(stack === null || stacked === null || stack.sets.length === 0
      ? []
      : [
          own(
            'support-template',
            [{ printName: '', stem: `orders/${stacked}${id}-support-template` }],
            shelf,
          ),
        ]),
    ...(labels === null
      ? []
      : [
          own(
            'labels',
            (['full', 'allergen-cards'] as const).map((name) => ({
              printName: words.page.files[name] ?? '',
              stem: `labels/${labels}orders/${id}-${name}`,
            })),
            shelf,
          ),
        ]),
  ];
}

/** The papers of an order, in the order in which they are wanted. */
export function orderPapers(order: PapersOrder, content: Content): OrderPaper[] {
  const { locale } = content.kitchen;
  const shelf = { order, content, words: orderWordsFor(locale), and: wordsFor(locale).and };
  return [...recipeCards(shelf), ...finishCards(shelf), ...liningTemplates(shelf), ...sheets(shelf)];
}
