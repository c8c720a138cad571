/**
 * Every reader against inputs made from good files by changes that bakers and others make: 2,500 here, 120,000 with
 * TINWRIGHT_LONG=1 (npm run fuzz). An input is known by its reader and number: TINWRIGHT_FUZZ=recipe:123 runs it alone.
 */
import { afterAll, describe, expect, it } from 'vitest';
import { answerFault } from './faults.ts';
import { inputOf } from './inputs.ts';
import { type Reader, readers } from './readers.ts';
import { watchdog } from './watchdog.ts';

const INPUTS = process.env.TINWRIGHT_LONG ? 120_000 : 2_500;
const LONGEST_CPU_MS = 2_000;
const HANG_MS = 30_000;
/** All inputs of one reader on a busy machine; a single one that hangs is told by the watchdog. */
const LONGEST_MS = 3_600_000;
const [asked, only] = (process.env.TINWRIGHT_FUZZ ?? '').split(':');

const all = await readers();
const dog = watchdog(
  all.map(({ name }) => name),
  HANG_MS,
);
afterAll(() => dog.stop());

function fault(reader: Reader, text: string): string | null {
  const before = process.cpuUsage();
  try {
    for (const answer of reader.read(text)) {
      const wrong = answerFault(answer);
      if (wrong !== null) return wrong;
    }
  } catch (thrown) {
    return thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown);
  }
  const { user } = process.cpuUsage(before);
  return user / 1000 > LONGEST_CPU_MS ? `took ${Math.round(user / 1000)} ms` : null;
}

function faultsOf(reader: Reader, numbers: readonly number[]): string[] {
  const found: string[] = [];
  for (const number of numbers) {
    dog.beat(all.indexOf(reader), number);
    const text = inputOf(reader, number);
    const wrong = fault(reader, text);
    if (wrong !== null) found.push(`${reader.name}:${number} ${wrong}`);
    if (found.length >= 10) break;
  }
  return found;
}

describe('no text makes a reader crash, hang, leak or let through what is no figure', () => {
  it.each(all.filter(({ name }) => !asked || asked === name).map((reader) => [reader.name, reader] as const))(
    '%s',
    (_, reader) => {
      const count = Math.ceil((INPUTS * reader.share) / 100);
      const numbers = only ? [Number(only)] : Array.from({ length: count }, (_one, number) => number);
      if (only) console.log(inputOf(reader, Number(only)));
      expect(faultsOf(reader, numbers)).toEqual([]);
    },
    LONGEST_MS,
  );

  it('the shares of the readers come to a whole', () => {
    expect(all.reduce((sum, { share }) => sum + share, 0)).toBe(100);
  });

  it.each(all.map((reader) => [reader.name, reader] as const))('%s reads its good texts', (_, reader) => {
    if (reader.name === 'units') return;
    for (const text of reader.good) expect(reader.read(text).some(({ value }) => value !== null)).toBe(true);
  });
});
