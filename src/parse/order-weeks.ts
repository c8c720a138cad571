/** Which orders are handed over in which week? Weeks by ISO 8601, Monday to Sunday, by the order's own clock. */
import { DayOfWeek, IsoFields, LocalDate, TemporalAdjusters } from '@js-joda/core';
import type { Order } from '../domain/order.ts';
import type { OrderWeek } from '../domain/order-week.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import type { WorkSettings } from '../domain/work-settings.ts';
import { dateBeside, kitchenCalendar } from './calendar.ts';

/** Fruit cake is baked this long before; nothing takes longer. */
const DAYS_BEFORE = 100;

interface IsoWeek {
  id: string;
  from: string;
  to: string;
}

/**
 * The ISO week of a date.
 * @example isoWeek('2027-01-01') // { id: '2026-W53', from: '2026-12-28', to: '2027-01-03' }
 */
function isoWeek(isoDate: string): IsoWeek {
  const date = LocalDate.parse(isoDate);
  const monday = date.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  const week = date.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
  const year = date.get(IsoFields.WEEK_BASED_YEAR);
  return {
    id: `${year}-W${String(week).padStart(2, '0')}`,
    from: monday.toString(),
    to: monday.plusDays(6).toString(),
  };
}

/** The weeks that have orders, earliest first; `orders` come earliest first. */
export function orderWeeks(orders: readonly Order[], work: WorkSettings): Result<OrderWeek[]> {
  const weeks = new Map<string, Omit<OrderWeek, 'calendar'>>();
  for (const { id, handOver } of orders) {
    const week = isoWeek(handOver.localTime.slice(0, 10));
    const before = weeks.get(week.id);
    if (before === undefined) weeks.set(week.id, { ...week, orderIds: [id] });
    else before.orderIds.push(id);
  }
  const made: OrderWeek[] = [];
  for (const week of weeks.values()) {
    const first = dateBeside(week.from, -DAYS_BEFORE);
    const calendar = kitchenCalendar(work.timeZone, work.workingDay, first, dateBeside(week.to, 1));
    if (!calendar.ok) return fail(...calendar.problems);
    made.push({ ...week, calendar: calendar.value });
  }
  return succeed(made);
}
