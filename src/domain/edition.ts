/**
 * Which date stands in the outputs: the kitchen's edition, unless SOURCE_DATE_EPOCH asks for another one
 * (Reproducible Builds, SOURCE_DATE_EPOCH specification 1.1: seconds since 1970-01-01 UTC, decimal; from memory).
 */
import type { Content } from './content.ts';
import { fail, type Result, succeed } from './result.ts';

/** 9999-12-31: later dates do not fit the ISO form. */
const LATEST_S = 253_402_214_400;

/** The content with the edition that outputs carry; `epoch` is the variable's text, undefined when it is not set. */
export function datedContent(content: Content, epoch: string | undefined): Result<Content> {
  if (epoch === undefined || epoch === '') return succeed(content);
  const seconds = /^\d{1,12}$/.test(epoch) ? Number(epoch) : Number.NaN;
  if (!(seconds <= LATEST_S)) {
    return fail({
      code: 'source-date-epoch',
      severity: 'error',
      message: `SOURCE_DATE_EPOCH is '${epoch.slice(0, 40)}', expected a whole number of seconds since 1970`,
      hint: 'Set it like SOURCE_DATE_EPOCH=1798761600, or unset it.',
    });
  }
  const edition = new Date(seconds * 1000).toISOString().slice(0, 10);
  return succeed({ ...content, kitchen: { ...content.kitchen, edition } });
}

/** Midnight UTC at the start of an ISO date. */
export function instantOf(isoDate: string): Date {
  return new Date(`${isoDate}T00:00:00Z`);
}
