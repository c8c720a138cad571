/** `portion_sizes` in kitchen.yaml: how large a dessert slice and a finger are cut here. */
import { type PortionSize, USUAL_PORTIONS } from '../domain/portion.ts';
import { type Result, succeed } from '../domain/result.ts';
import { refuse } from './problems.ts';
import { quote } from './quote.ts';
import { parseLength } from './units/length.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';

const SIDE_MM = { least: 10, most: 200 };

function parseSide(text: string): Result<number> {
  const length = parseLength(text);
  if (!length.ok) return length;
  const { mm } = length.value;
  if (mm >= SIDE_MM.least && mm <= SIDE_MM.most) return succeed(mm);
  const hint = `Use ${SIDE_MM.least} mm to ${SIDE_MM.most} mm.`;
  return refuse('quantity-out-of-range', `${quote(text)} is out of range for a piece of cake`, hint);
}

/** The kitchen's portions; the usual for what is left out. */
export function readPortionSizes(reader: YamlReader): PortionSize[] {
  return USUAL_PORTIONS.map((usual) => {
    const path = ['portion_sizes', usual.id] as const;
    const one = reader.parsed(parseSide, ...path, 'short') ?? usual.shortMm;
    const other = reader.parsed(parseSide, ...path, 'long') ?? usual.longMm;
    const name = reader.text(...path, 'name') ?? usual.name;
    return { id: usual.id, name, shortMm: Math.min(one, other), longMm: Math.max(one, other) };
  });
}
