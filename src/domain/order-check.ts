/**
 * Is this an order that can be worked from? Everything wrong at once. Links to tins, recipes and finishes are
 * checked where those are known.
 */
import { isMoney } from './money.ts';
import { isDummy, type Order, type OrderExtra, stackOf, type TierAsk } from './order.ts';
import type { Problem } from './problem.ts';
import { fail, type Result, succeed } from './result.ts';

const problem = (code: string, message: string, hint: string): Problem => ({
  code,
  severity: 'error',
  message,
  hint,
});

/** Two to sixteen capitals, digits and hyphens with a digit among them: a name does not pass for a code. */
const REFERENCE = /^(?=.*\d)[A-Z0-9][A-Z0-9-]{1,15}$/;
const LOCAL_TIME = /^(\d{4})-(\d\d)-(\d\d)T([01]\d|2[0-3]):([0-5]\d)$/;
const ZONE = /^(UTC|[A-Za-z_]+(\/[A-Za-z0-9_+-]+){1,2})$/;

const isCount = (count: number): boolean => Number.isSafeInteger(count) && count >= 1;

function daysIn(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/** Whether the text is a date and time of day that the calendar has, `2026-11-28T14:00`. */
export function isLocalTime(text: string): boolean {
  const match = LOCAL_TIME.exec(text);
  if (match === null) return false;
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  return month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month);
}

function tierProblems(tier: TierAsk, at: number): Problem[] {
  const name = `Tier ${at + 1} (${tier.tinId})`;
  const found: Problem[] = [];
  if (!isCount(tier.count)) {
    found.push(
      problem(
        'tier-count',
        `${name}: count is ${tier.count}, expected a whole number from 1`,
        'Write count: 1.',
      ),
    );
  }
  if (tier.layers !== undefined && !isCount(tier.layers)) {
    found.push(
      problem(
        'tier-layers',
        `${name}: layers is ${tier.layers}, expected a whole number from 1`,
        'Write layers: 3.',
      ),
    );
  }
  const height = tier.finishedHeightMm;
  if (height !== undefined && !(height > 0 && Number.isFinite(height))) {
    const message = `${name}: the finished height is ${height} mm, expected more than nothing`;
    found.push(problem('tier-height', message, 'Write a height such as 65 mm, or leave it out.'));
  }
  return found;
}

function extraProblems({ name, count, eachMinor, vatShare }: OrderExtra): Problem[] {
  const sound = isCount(count) && isMoney(eachMinor) && (vatShare === undefined || isShare(vatShare));
  if (sound) return [];
  const message = `${name}: count ${count}, price ${eachMinor}, VAT ${vatShare ?? 'as usual'}; expected a count from 1, a price of 0 or more in whole minor units and VAT from 0 to 1`;
  return [problem('order-extra', message, 'Give how many, what one costs, and VAT such as 20 %.')];
}

const isShare = (share: number): boolean => share >= 0 && share <= 1;

function handOverProblems({ handOver }: Order): Problem[] {
  const found: Problem[] = [];
  if (!isLocalTime(handOver.localTime)) {
    const message = `The hand-over is '${handOver.localTime}', expected a date and time of the calendar`;
    found.push(problem('hand-over-time', message, 'Write it like 2026-11-28T14:00.'));
  }
  if (!ZONE.test(handOver.zone)) {
    const message = `The time zone is '${handOver.zone}', expected an IANA name`;
    found.push(problem('hand-over-zone', message, 'Write it like Europe/London.'));
  }
  return found;
}

function keptProblems(order: Order): Problem[] {
  const stack = stackOf(order);
  const top = stack.at(-1);
  if (!order.keepsTopTier) return [];
  if (stack.length < 2) {
    const message = 'The top tier is kept back, but there is only one tier';
    return [problem('top-tier-kept', message, 'Add a tier, or leave keep_top_tier out.')];
  }
  if (top === undefined || !isDummy(top)) return [];
  const message = 'The top tier is kept back, but it is a dummy';
  return [problem('top-tier-kept', message, 'Leave keep_top_tier out, or make the top tier of cake.')];
}

/** The order, or everything that is wrong with it. */
export function checkedOrder(order: Order): Result<Order> {
  const found: Problem[] = [];
  if (!REFERENCE.test(order.reference)) {
    const message = `The customer's reference is '${order.reference}', expected a code of capitals, digits and hyphens with at least one digit`;
    found.push(problem('order-reference', message, 'Write a code such as R-1042, never a name.'));
  }
  if (order.tiers.length === 0) {
    found.push(
      problem(
        'order-without-cake',
        'Nothing in this order is cake',
        'Add a tier, a cutting cake or small cakes.',
      ),
    );
  }
  found.push(...order.tiers.flatMap(tierProblems), ...order.extras.flatMap(extraProblems));
  found.push(...handOverProblems(order));
  if (order.portions !== undefined && !isCount(order.portions.wanted)) {
    const message = `Portions wanted: ${order.portions.wanted}, expected a whole number from 1`;
    found.push(problem('portions-wanted', message, 'Write portions: 60, or leave it out.'));
  }
  found.push(...keptProblems(order));
  return found.length > 0 ? fail(...found) : succeed(order);
}
