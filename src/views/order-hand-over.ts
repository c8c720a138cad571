/** When and where an order changes hands, in words; weekdays come from the week's own calendar. */
import type { Content } from '../domain/content.ts';
import type { Order } from '../domain/order.ts';
import type { OrderWeek } from '../domain/order-week.ts';
import { type OrderWords, orderWordsFor } from '../wording/orders/index.ts';
import type { HandOverView } from './order.types.ts';

/** 'Saturday 28 November 2026'; the date alone where the calendar does not reach. */
export function dayText(isoDate: string, { calendar }: OrderWeek, words: OrderWords): string {
  const day = calendar.days.find((one) => one.isoDate === isoDate);
  const weekday = day === undefined ? undefined : words.weekdays[day.weekday - 1];
  return weekday === undefined ? words.date(isoDate) : words.weekdayAndDate(weekday, words.date(isoDate));
}

/** The hand-over; the zone is named where it is not the kitchen's own. */
export function handOverView(
  { handOver }: Order,
  week: OrderWeek,
  { kitchen, work }: Pick<Content, 'kitchen' | 'work'>,
): HandOverView {
  const words = orderWordsFor(kitchen.locale);
  const { localTime, zone, place } = handOver;
  const [date = '', time = ''] = localTime.split('T');
  const text = `${dayText(date, week, words)}, ${words.clock(time)}`;
  return {
    localTime,
    zone,
    text: zone === work.timeZone ? text : `${text} (${words.zoneNote(zone)})`,
    placeText: words.places[place],
  };
}
