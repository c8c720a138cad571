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

/**
 * An ISO date in words; text that is not one is given back as it is.
 * @example formatDate('2026-11-01') // '1 November 2026'
 */
export function formatDate(isoDate: string): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(isoDate) ?? [];
  const name = MONTHS[Number(month) - 1];
  return year && day && name ? `${Number(day)} ${name} ${year}` : isoDate;
}
