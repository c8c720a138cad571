/** Calendar dates as people write them. Written by hand: the platform's own wording differs between engines. */
const MONTHS: readonly string[] = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** @example monthName(1) // 'January' */
export const monthName = (month: number): string => MONTHS[month - 1] ?? '';

/** An ISO date in words. Text that is not one is given back as it is. */
export type DateFormat = (isoDate: string) => string;

/** A format from how a locale puts day, month and year in order. */
function dateFormat(order: (day: number, month: string, year: string) => string): DateFormat {
  return (isoDate) => {
    const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(isoDate) ?? [];
    const name = monthName(Number(month));
    return year && day && name ? order(Number(day), name, year) : isoDate;
  };
}

/** @example britishDate('2026-11-01') // '1 November 2026' */
export const britishDate: DateFormat = dateFormat((day, month, year) => `${day} ${month} ${year}`);

/** @example americanDate('2026-11-01') // 'November 1, 2026' */
export const americanDate: DateFormat = dateFormat((day, month, year) => `${month} ${day}, ${year}`);
