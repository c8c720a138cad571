/** Names of time zones, by the IANA list that the calendar library carries. */
import { ZoneRulesProvider } from '@js-joda/core';
import '@js-joda/timezone';
import { type Result, succeed } from '../../domain/result.ts';
import { suggest } from '../nearest.ts';
import { refuse } from '../problems.ts';
import { quote } from '../quote.ts';

/**
 * An IANA name: 'Europe/London'. Fails on names that are not in the list, with the nearest.
 * @example parseTimeZone('Europe/London') // { ok: true, value: 'Europe/London' }
 */
export function parseTimeZone(text: string): Result<string> {
  const known = [...ZoneRulesProvider.getAvailableZoneIds()].filter((id) => id === 'UTC' || id.includes('/'));
  if (known.includes(text)) return succeed(text);
  const near = suggest(text, known, 'time zones');
  const hint = near.startsWith('Did') ? near : 'Write a name such as Europe/London or America/New_York.';
  return refuse('time-zone-unknown', `${quote(text)} is not a time zone`, hint);
}
