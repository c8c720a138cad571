/** `finishing` in kitchen.yaml: how cakes are finished when nobody says otherwise; usual values for the rest. */
import { type FinishingSettings, USUAL_FINISHING } from '../domain/finishing.ts';
import { type Result, succeed } from '../domain/result.ts';
import { refuse } from './problems.ts';
import { quote } from './quote.ts';
import { parseLength } from './units/length.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';

type Key = Exclude<keyof FinishingSettings, 'layers'>;

interface Limits {
  leastMm: number;
  mostMm: number;
}

interface KeyLimits extends Limits {
  key: string;
}

const LENGTHS: Record<Key, KeyLimits> = {
  cakeHeightMm: { key: 'cake_height', leastMm: 10, mostMm: 400 },
  damMm: { key: 'dam', leastMm: 0, mostMm: 40 },
  undercoatMm: { key: 'undercoat', leastMm: 0, mostMm: 40 },
  ribbonOverlapMm: { key: 'ribbon_overlap', leastMm: 0, mostMm: 300 },
  boardMarginMm: { key: 'board_margin', leastMm: 0, mostMm: 300 },
  boardThicknessMm: { key: 'board_thickness', leastMm: 0, mostMm: 50 },
  boxHeightClearanceMm: { key: 'box_clearance', leastMm: 0, mostMm: 300 },
};

/** A length between limits, mm. */
export function parseWithin(text: string, { leastMm, mostMm }: Limits): Result<number> {
  const length = parseLength(text, { zero: leastMm === 0 });
  if (!length.ok) return length;
  if (length.value.mm >= leastMm && length.value.mm <= mostMm) return succeed(length.value.mm);
  const hint = `Use ${leastMm} mm to ${mostMm} mm. Check the unit.`;
  return refuse('quantity-out-of-range', `${quote(text)} is out of range here`, hint);
}

/** The kitchen's settings; what is wrong stays the usual value and is reported. */
export function readFinishing(reader: YamlReader): FinishingSettings {
  const settings = {
    ...USUAL_FINISHING,
    layers: reader.number('finishing', 'layers') ?? USUAL_FINISHING.layers,
  };
  for (const [name, limits] of Object.entries(LENGTHS) as [Key, KeyLimits][]) {
    const written = reader.parsed((text) => parseWithin(text, limits), 'finishing', limits.key);
    if (written !== undefined) settings[name] = written;
  }
  return settings;
}
