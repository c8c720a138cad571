/** `bun_tins` of kitchen.yaml: tins of several cups, each with the size or the volume of a cup. */
import type { BunTin } from '../../domain/bun-tin.ts';
import type { TinForm } from '../../domain/tin.ts';
import { parseId } from '../names.ts';
import { error } from '../problems.ts';
import { quote } from '../quote.ts';
import { readSmallBake } from '../small-bake.ts';
import { parseLength } from '../units/length.ts';
import { parseVolume } from '../units/volume.ts';
import { complete, present, type YamlReader } from '../yaml/yaml-reader.ts';
import type { YamlPath } from '../yaml/yaml-source.ts';
import { tinProblems } from './tin-sense.ts';

/** A cup by its sizes, by the water it holds, or by both. */
function readCup(reader: YamlReader, path: YamlPath): TinForm | null {
  const depthMm = reader.parsed(parseLength, ...path, 'cup_depth')?.mm;
  const acrossMm = reader.parsed(parseLength, ...path, 'across')?.mm;
  const baseAcrossMm = reader.parsed(parseLength, ...path, 'base_across')?.mm;
  const holdsMl = reader.parsed(parseVolume, ...path, 'cup_volume')?.ml;
  if (!reader.has(...path, 'across') && !reader.has(...path, 'cup_volume')) {
    const hint = "Add 'across: 70 mm', or 'cup_volume: 100 ml' for the water one cup holds.";
    reader.report(error('bun-tin-cup', 'Nobody knows how large a cup of this tin is', hint), ...path);
  }
  if (depthMm === undefined) return null;
  if (acrossMm === undefined)
    return holdsMl === undefined ? null : { shape: { kind: 'measured', volumeMl: holdsMl }, depthMm };
  const sizes = present({ across: acrossMm, base_across: baseAcrossMm });
  const wrong = tinProblems('round', sizes, depthMm, present({ measuredVolumeMl: holdsMl }));
  const keys: Partial<Record<string, string>> = { depth: 'cup_depth', measured_volume: 'cup_volume' };
  for (const { key, problem } of wrong) reader.report(problem, ...path, keys[key] ?? key);
  if (wrong.length > 0) return null;
  const shape: TinForm['shape'] = { kind: 'round', acrossMm, ...present({ baseAcrossMm }) };
  return { shape, depthMm, ...present({ measuredVolumeMl: holdsMl }) };
}

/** The outside, which is what the oven has to take. */
function readOutside(
  reader: YamlReader,
  path: YamlPath,
): Pick<BunTin, 'lengthMm' | 'widthMm' | 'unit'> | null {
  const length = reader.parsed(parseLength, ...path, 'length');
  const widthMm = reader.parsed(parseLength, ...path, 'width')?.mm;
  const sizes = present({ length: length?.mm, width: widthMm });
  const wrong = tinProblems('rectangle', sizes, undefined);
  for (const { key, problem } of wrong) reader.report(problem, ...path, key);
  if (length === undefined || widthMm === undefined || wrong.length > 0) return null;
  return { lengthMm: length.mm, widthMm, unit: length.unit };
}

function readBunTin(reader: YamlReader, path: YamlPath): BunTin | null {
  const before = reader.problems.length;
  const whole = complete<Pick<BunTin, 'id' | 'name' | 'cups' | 'cup'>>({
    id: reader.parsed(parseId, ...path, 'id'),
    name: reader.text(...path, 'name'),
    cups: reader.number(...path, 'cups'),
    cup: readCup(reader, path) ?? undefined,
  });
  const outside = readOutside(reader, path);
  const optional = present({
    bake: readSmallBake(reader, ...path, 'bake'),
    note: reader.text(...path, 'note'),
  });
  if (whole === null || outside === null || reader.problems.length > before) return null;
  return { ...whole, ...outside, owned: reader.number(...path, 'owned') ?? 1, ...optional };
}

/** The bun tins that could be read, and the ids of those that are there but wrong; `taken` are ids of tins. */
export function readBunTins(
  reader: YamlReader,
  taken: readonly string[],
): { bunTins: BunTin[]; broken: string[] } {
  const bunTins: BunTin[] = [];
  const broken: string[] = [];
  for (let index = 0; index < reader.items('bun_tins'); index += 1) {
    const path = ['bun_tins', index] as const;
    const id = reader.text(...path, 'id');
    const found = readBunTin(reader, path);
    if (id !== undefined && [...taken, ...broken, ...bunTins.map((one) => one.id)].includes(id)) {
      const hint = "Give each its own id; several of one kind are one entry with 'owned: 2'.";
      reader.report(
        error('tin-id-repeated', `Another tin is called ${quote(id)} already`, hint),
        ...path,
        'id',
      );
    } else if (found !== null) bunTins.push(found);
    else if (id !== undefined) broken.push(id);
  }
  return { bunTins, broken };
}
