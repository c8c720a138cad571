/** `bundle`: prints, made afresh, as one zip to hand on or sell, with imprint, edition and checksums. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Content } from '../domain/content.ts';
import { readContent } from '../read/content.ts';
import { sha256 } from '../read/sha256.ts';
import { runBuild } from './build-command.ts';
import { CHECKSUMS, checksumsText, type Edition, IMPRINT, imprintText } from './bundle/imprint.ts';
import { soldPrints } from './bundle/sold-prints.ts';
import { zipOf } from './bundle/zip-file.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { REPORT } from './output/places.ts';
import type { Report } from './output/report.ts';
import { writeWhole } from './output/write-whole.ts';
import { counted, refuseContent, refuseUsage, usageProblem } from './problem-report.ts';
import type { Terminal } from './terminal.ts';

export interface BundleOptions {
  content: string;
  output: string;
  /** The zip; named after kitchen and edition when left out. */
  to?: string;
  /** Number of the edition, as typed. */
  number: string;
  /** A further house style's id. */
  style?: string;
}

/** Runs the command. The zip is there whole or not at all. */
export async function runBundle(options: BundleOptions, terminal: Terminal): Promise<ExitCode> {
  if (!/^[1-9]\d{0,5}$/.test(options.number)) return refuseUsage([numberProblem(options.number)], terminal);
  const { content, problems } = await readContent(options.content);
  if (content === null) return refuseContent(problems, terminal);
  const wrongStyle = styleProblem(content, options.style);
  if (wrongStyle !== null) return refuseUsage([wrongStyle], terminal);
  const built = await runBuild(
    { content: options.content, output: options.output, only: 'print', quiet: true, cache: false },
    terminal,
  );
  if (built !== EXIT.done) return built;

  const report = JSON.parse(readFileSync(join(options.output, REPORT), 'utf8')) as Report;
  const prints = soldPrints(options.output, report, options.style ?? null);
  if (prints.length === 0) return refuseContent([emptyProblem()], terminal);
  const edition: Edition = { number: Number(options.number), dated: report.dated };
  const name = `${fileName(content.kitchen.name)}-edition-${options.number}`;
  const paths = prints.map(({ path }) => path);
  const imprint = imprintText(content.kitchen, content.booklet, edition, paths);
  const listed = [...prints, { path: IMPRINT, bytes: imprint, sha256: sha256(imprint) }];
  const files = [...listed, { path: CHECKSUMS, bytes: checksumsText(listed) }];
  const zip = zipOf(
    files.map((file) => ({ ...file, path: `${name}/${file.path}` })),
    report.dated,
  );
  const target = options.to ?? `${name}.zip`;
  writeWhole(target, zip);
  terminal.say(`Wrote ${target}: ${counted(prints.length, 'print')}, ${IMPRINT}, ${CHECKSUMS}.`);
  if (content.booklet.licence === undefined)
    terminal.tell('Its imprint does not say who may copy it: add booklet: { licence: … } to kitchen.yaml.');
  return EXIT.done;
}

/** The kitchen's name in small plain letters, for a file. */
function fileName(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/[\u0300-\u036f’']/g, '')
    .toLowerCase();
  return (
    plain
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 60) || 'kitchen'
  );
}

function numberProblem(number: string) {
  return usageProblem(
    'edition-number',
    `--number is '${number}', expected a whole number from 1 to 999999`,
    "Write it like '--number 2' for the second edition.",
  );
}

function styleProblem({ houseStyles }: Content, style: string | undefined) {
  if (style === undefined || houseStyles.some(({ id }) => id === style)) return null;
  const known = houseStyles.map(({ id }) => `'${id}'`).join(', ');
  return usageProblem(
    'style-unknown',
    `--style is '${style}', expected ${known === '' ? 'nothing: this kitchen has one house style' : known}`,
    'List further styles in kitchen.yaml as house_styles: [ID]; leave --style out for house-style.yaml.',
  );
}

function emptyProblem() {
  return usageProblem(
    'bundle-empty',
    'There is nothing to hand on: no chart, card, booklet, wall reference or template was printed',
    'Add a recipe, or list more under printables: in kitchen.yaml. Orders and labels are never handed on.',
  );
}
