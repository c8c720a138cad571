/** How a finish is put on: between, around, rolled over or brushed on; at least one. */
import type { FinishUse } from '../domain/finish.ts';
import { type Result, succeed } from '../domain/result.ts';
import { error, refuse } from './problems.ts';
import { quote } from './quote.ts';
import { parseLength } from './units/length.ts';
import { parsePerArea } from './units/per-area.ts';
import { complete, present, type YamlReader } from './yaml/yaml-reader.ts';

const THICKEST_MM = 60;
const USES = ['filling', 'coating', 'rolled', 'brushed'] as const;

/** A thickness or a trim, mm: at most 60. */
function parseThin(text: string): Result<number> {
  const length = parseLength(text, { zero: true });
  if (!length.ok) return length;
  if (length.value.mm <= THICKEST_MM) return succeed(length.value.mm);
  const hint = `Use 0 mm to ${THICKEST_MM} mm. Check the unit.`;
  return refuse('quantity-out-of-range', `${quote(text)} is too thick for a filling or a coat`, hint);
}

function coating(reader: YamlReader): FinishUse['coating'] | undefined {
  if (!reader.has('coating')) return undefined;
  const whole = complete<NonNullable<FinishUse['coating']>>({
    crumbMm: reader.has('coating', 'crumb') ? reader.parsed(parseThin, 'coating', 'crumb') : 0,
    finalMm: reader.parsed(parseThin, 'coating', 'final'),
    corners: reader.word(['sharp'] as const, 'coating', 'corners') ?? 'rounded',
  });
  return whole ?? undefined;
}

function rolled(reader: YamlReader): FinishUse['rolled'] | undefined {
  if (!reader.has('rolled')) return undefined;
  const whole = complete<NonNullable<FinishUse['rolled']>>({
    thicknessMm: reader.parsed(parseThin, 'rolled', 'thickness'),
    trimMm: reader.parsed(parseThin, 'rolled', 'trim'),
  });
  return whole ?? undefined;
}

/** The uses of a finish; undefined when there is none. */
export function finishUse(reader: YamlReader): FinishUse | undefined {
  if (!USES.some((use) => reader.has(use))) {
    const hint = "Add 'filling: { thickness: 8 mm }', 'coating:', 'rolled:' or 'brushed:'.";
    reader.report(error('finish-without-use', 'This finish does not say how it is put on', hint));
    return undefined;
  }
  const thicknessMm = reader.parsed(parseThin, 'filling', 'thickness');
  const gPerCm2 = reader.parsed(parsePerArea, 'brushed', 'per_face');
  return present<FinishUse>({
    filling: thicknessMm === undefined ? undefined : { thicknessMm },
    coating: coating(reader),
    rolled: rolled(reader),
    brushed: gPerCm2 === undefined ? undefined : { gPerCm2 },
  } as { [K in keyof FinishUse]: FinishUse[K] | undefined });
}
