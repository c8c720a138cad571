/**
 * Which prints and data files go public with the site? All but those of orders: they hold what customers pay and
 * what the baker earns, and stay beside the site unless the kitchen publishes its orders.
 */
import type { Content } from '../domain/content.ts';
import type { BuiltFile } from '../views/downloads.ts';

/** 'print/orders/…', 'print/in-STYLE/orders/…', 'data/weeks/…', 'print/labels/orders/…'. */
const OF_ORDERS = /(^|\/)(orders|weeks)\//;

/** The files that the site may offer. */
export function publishedFiles<F extends BuiltFile>(
  files: readonly F[],
  { publishesOrders }: Pick<Content, 'publishesOrders'>,
): F[] {
  return files.filter(({ path }) => publishesOrders || !OF_ORDERS.test(path));
}
