/** Which tins has this recipe been seen to fill well? Each bake's tins, height and batter, checked against the rim. */
import type { FormulaLine, ProvenBake } from '../domain/recipe.ts';
import type { TinCount } from '../domain/tin.ts';
import { error } from './problems.ts';
import { quote } from './quote.ts';
import { parseSpec, type SpecContext } from './spec.ts';
import { shownMm } from './tins/tin-sense.ts';
import { parseDay } from './units/date.ts';
import { parseFinishedHeight } from './units/length.ts';
import { parseMass } from './units/mass.ts';
import { tidy } from './units/number.ts';
import { present, type YamlReader } from './yaml/yaml-reader.ts';

const WHOLE = 'whole formula';

function formulaG(formula: readonly FormulaLine[]): number {
  return tidy(formula.reduce((sum, line) => sum + line.grams, 0));
}

function checkHeight(
  reader: YamlReader,
  index: number,
  tins: readonly TinCount[],
  heightMm: number,
  riseMm: number,
): void {
  const over = tins.find(({ tin }) => heightMm > tin.depthMm + riseMm + 0.001);
  if (over === undefined) return;
  const message = `A cake ${shownMm(heightMm)} high stands above the rim of ${quote(over.tin.id)}, which is ${shownMm(over.tin.depthMm)} deep`;
  const hint = `Write the height it came out at, up to ${shownMm(over.tin.depthMm + riseMm)}, or a larger 'allowed_rise'.`;
  reader.report(error('proven-bake-over-rim', message, hint), 'proven_bakes', index, 'finished_height');
}

function batterOf(reader: YamlReader, index: number, formula: readonly FormulaLine[]): number | undefined {
  const path = ['proven_bakes', index, 'batter'] as const;
  const written = reader.text(...path);
  if (!reader.has(...path) || written?.trim() === WHOLE) return formulaG(formula);
  return reader.parsed(parseMass, ...path);
}

function readBake(
  reader: YamlReader,
  index: number,
  formula: readonly FormulaLine[],
  riseMm: number | undefined,
  context: SpecContext,
): ProvenBake | null {
  const path = ['proven_bakes', index] as const;
  const tins = reader.parsed((text) => parseSpec(text, context), ...path, 'tins');
  const finishedHeightMm = reader.parsed(parseFinishedHeight, ...path, 'finished_height')?.mm;
  const batterG = batterOf(reader, index, formula);
  const optional = present({
    date: reader.parsed(parseDay, ...path, 'date'),
    note: reader.text(...path, 'note'),
  });
  if (tins === undefined || finishedHeightMm === undefined) return null;
  if (riseMm !== undefined) checkHeight(reader, index, tins, finishedHeightMm, riseMm);
  return batterG === undefined ? null : { tins, finishedHeightMm, batterG, ...optional };
}

/** The proven bakes of a recipe; undefined when one of them is wrong or there are none. */
export function readProvenBakes(
  reader: YamlReader,
  formula: readonly FormulaLine[],
  riseMm: number | undefined,
  context: SpecContext,
): ProvenBake[] | undefined {
  const count = reader.items('proven_bakes');
  if (count === 0) {
    const hint =
      "Add at least one: '  - { tins: 2 x round 7in x 3in, finished_height: 65 mm, batter: 1300 g }'.";
    const message = 'The recipe has no proven bake, so nothing tells how much batter fills a tin';
    reader.reportKey(error('proven-bake-missing', message, hint), 'proven_bakes');
    return undefined;
  }
  const bakes = Array.from({ length: count }, (_, index) =>
    readBake(reader, index, formula, riseMm, context),
  );
  const sound = bakes.filter((bake) => bake !== null);
  return sound.length === count ? sound : undefined;
}
