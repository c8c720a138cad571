/** One tin of kitchen.yaml: its text becomes a Tin, or a list of what is wrong with it. */
import { outlineBounds } from '../../compute/outline/bounds.ts';
import { transformOutline } from '../../compute/outline/transform.ts';
import type { Outline } from '../../domain/outline.ts';
import { SHAPE_KINDS, type ShapeKind } from '../../domain/shape.ts';
import { TIN_MATERIALS, type Tin } from '../../domain/tin.ts';
import type { LengthUnit } from '../../domain/units.ts';
import { parseId } from '../names.ts';
import { error } from '../problems.ts';
import { withArticle } from '../quote.ts';
import { type LengthAsWritten, parseLength } from '../units/length.ts';
import { parseVolume } from '../units/volume.ts';
import { complete, present, type YamlReader } from '../yaml/yaml-reader.ts';
import type { YamlPath } from '../yaml/yaml-source.ts';
import { outlineProblem } from './described-tin.ts';
import { SHAPE_SIZES, type ShapeExtras, SIZE_KEYS, type Sizes, shapeOf } from './shape-sizes.ts';
import { tinProblems } from './tin-sense.ts';

/** A drawing of the outlines folder; without a size of its own the tin must say how wide it is. */
export interface OutlineDrawing {
  id: string;
  outline: Outline;
  sized: boolean;
}

/** Outlines that tins may use; null when the drawing exists but could not be read. */
export type Drawings = ReadonlyMap<string, OutlineDrawing | null>;

function readSizes(
  reader: YamlReader,
  kind: ShapeKind,
  path: YamlPath,
): { sizes: Sizes; units: LengthUnit[] } {
  const { required, oneOf, optional } = SHAPE_SIZES[kind];
  const allowed = new Set<string>([...required, ...oneOf, ...optional]);
  const sizes: Sizes = {};
  const units: LengthUnit[] = [];
  // In the order written: the first unit is the one printed first.
  for (const key of reader.keys(...path)) {
    const size = SIZE_KEYS.find((known) => known === key);
    if (size === undefined || !allowed.has(size)) continue;
    const length = reader.parsed(parseLength, ...path, size);
    if (length === undefined) continue;
    sizes[size] = length.mm;
    units.push(length.unit);
  }
  return { sizes, units };
}

function checkOneOf(reader: YamlReader, kind: ShapeKind, path: YamlPath): void {
  const { oneOf } = SHAPE_SIZES[kind];
  if (oneOf.length === 0) return;
  const [first = '', second = ''] = oneOf;
  const given = oneOf.filter((key) => reader.has(...path, key));
  if (given.length === 0) {
    const hint = `Add '${first}: 8in' or '${second}: 8in'.`;
    reader.report(
      error('key-missing', `This ${kind} tin has neither '${first}' nor '${second}'`, hint),
      ...path,
    );
  } else if (given.length > 1) {
    const hint = 'Keep the one you measured.';
    reader.reportKey(
      error(
        'tin-measure-clash',
        `'${first}' and '${second}' are two ways of measuring ${withArticle(kind)} tin; this one has both`,
        hint,
      ),
      ...path,
      second,
    );
  }
}

/** The drawing scaled so that its larger side is `acrossMm`. */
function scaledTo(outline: Outline, acrossMm: number): Outline {
  const { minX, maxX, minY, maxY } = outlineBounds(outline);
  return transformOutline(outline, { scale: acrossMm / Math.max(maxX - minX, maxY - minY) });
}

function readOutline(reader: YamlReader, path: YamlPath, drawings: Drawings, sizes: Sizes): ShapeExtras {
  const id = reader.text(...path, 'outline');
  if (id === undefined) return {};
  const drawing = drawings.get(id);
  if (drawing === undefined) {
    const known = [...drawings.keys()].map((name) => ({ id: name, outline: { rings: [] } }));
    reader.report(outlineProblem(id, known), ...path, 'outline');
  }
  if (!drawing) return {};
  if (sizes.across !== undefined) return { outlineId: id, outline: scaledTo(drawing.outline, sizes.across) };
  if (drawing.sized) return { outlineId: id, outline: drawing.outline };
  if (!reader.has(...path, 'across')) {
    const hint = "Add 'across: 8in' for its larger side, or give the drawing a width in mm.";
    const message = `The drawing '${id}' does not say how large it is, and neither does this tin`;
    reader.report(error('outline-size-missing', message, hint), ...path, 'outline');
  }
  return {};
}

function readExtras(
  reader: YamlReader,
  kind: ShapeKind,
  path: YamlPath,
  drawings: Drawings,
  sizes: Sizes,
): ShapeExtras {
  if (kind === 'petal') return present<ShapeExtras>({ petals: reader.number(...path, 'petals') });
  if (kind === 'measured') {
    return present<ShapeExtras>({ volumeMl: reader.parsed(parseVolume, ...path, 'volume')?.ml });
  }
  return kind === 'outline' ? readOutline(reader, path, drawings, sizes) : {};
}

function readDepth(
  reader: YamlReader,
  kind: ShapeKind,
  path: YamlPath,
  sizes: Sizes,
): LengthAsWritten | undefined {
  if (kind === 'dome' && !reader.has(...path, 'depth')) {
    return sizes.across === undefined ? undefined : { mm: sizes.across / 2, unit: 'mm' };
  }
  return reader.parsed(parseLength, ...path, 'depth');
}

/** The tin at a path of kitchen.yaml; null when something about it is wrong (then the reader has the problems). */
export function readTin(reader: YamlReader, path: YamlPath, drawings: Drawings): Tin | null {
  const kind = reader.word(SHAPE_KINDS, ...path, 'shape');
  const id = reader.parsed(parseId, ...path, 'id');
  if (kind === undefined) return null;
  const before = reader.problems.length;
  const { sizes, units } = readSizes(reader, kind, path);
  checkOneOf(reader, kind, path);
  const extras = readExtras(reader, kind, path, drawings, sizes);
  const depth = readDepth(reader, kind, path, sizes);
  const measuredVolumeMl = reader.parsed(parseVolume, ...path, 'measured_volume')?.ml;
  const wrong = tinProblems(kind, sizes, depth?.mm, present({ petals: extras.petals, measuredVolumeMl }));
  for (const { key, problem } of wrong) reader.report(problem, ...path, key);
  const tin = complete<Pick<Tin, 'id' | 'name' | 'depthMm'>>({
    id,
    name: reader.text(...path, 'name'),
    depthMm: depth?.mm,
  });
  const shape = shapeOf(kind, sizes, extras);
  if (tin === null || shape === null || reader.problems.length > before) return null;
  const unit = reader.word(['in', 'cm', 'mm'] as const, ...path, 'unit') ?? units[0] ?? depth?.unit ?? 'mm';
  return {
    ...tin,
    shape,
    owned: reader.number(...path, 'owned') ?? 1,
    unit,
    ...present({
      measuredVolumeMl,
      material: reader.word(TIN_MATERIALS, ...path, 'material'),
      note: reader.text(...path, 'note'),
    }),
  };
}
