import { describe, expect, it } from 'vitest';
import { POUNDS } from '../../../src/domain/money.ts';
import { parseDayAndTime, parseTimeOfDay } from '../../../src/parse/units/moment.ts';
import { parseMoney, parseRate } from '../../../src/parse/units/money.ts';
import { parseTimeZone } from '../../../src/parse/units/time-zone.ts';

const YEN = { code: 'JPY', minorPerMajor: 1 };
const value = <T>(result: { ok: true; value: T } | { ok: false }): T | null =>
  result.ok ? result.value : null;

describe('parseMoney', () => {
  it.each([
    ['12', 1200],
    ['12.5', 1250],
    ['0.05', 5],
    ['0', 0],
    ['1.10', 110],
    ['0.29', 29],
    ['1234567.89', 123456789],
  ])('%s is %d pence', (text, minor) => expect(value(parseMoney(text, POUNDS))).toBe(minor));

  it.each(['£4', '-1', '1,20', '1.234', '1e3', '', '12345678'])('refuses %s', (text) =>
    expect(value(parseMoney(text, POUNDS))).toBeNull(),
  );

  it('knows a currency without parts', () => {
    expect(value(parseMoney('500', YEN))).toBe(500);
    expect(value(parseMoney('500.5', YEN))).toBeNull();
  });
});

describe('parseRate', () => {
  it('keeps parts of a penny', () => expect(value(parseRate('0.2475 per kWh', 'kWh', POUNDS))).toBe(24.75));
  it('does not take one unit for the other', () =>
    expect(value(parseRate('14.00 per kWh', 'h', POUNDS))).toBeNull());
});

describe('moments', () => {
  it('reads times of day in minutes', () => {
    expect(value(parseTimeOfDay('07:30'))).toBe(450);
    expect(value(parseTimeOfDay('24:00'))).toBe(1440);
    for (const text of ['7:30', '24:01', '12.00', '12:60']) expect(value(parseTimeOfDay(text))).toBeNull();
  });
  it('reads a day with a time, leap days included', () => {
    expect(value(parseDayAndTime('2028-02-29 09:05'))).toBe('2028-02-29T09:05');
    expect(value(parseDayAndTime('2027-02-29 09:05'))).toBeNull();
  });
  it('knows the zones of the IANA list, and UTC', () => {
    for (const zone of ['UTC', 'Europe/London', 'America/Argentina/Ushuaia'])
      expect(value(parseTimeZone(zone))).toBe(zone);
    expect(value(parseTimeZone('Mars/Base'))).toBeNull();
  });
});
