// How long files and functions are; fails where they outgrow what DEVELOPERS.md promises.
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { parseSync, Visitor } from 'oxc-parser';

const PROMISED = {
  src: { file: { median: 65, ninth: 200 }, function: { median: 8, ninth: 30 } },
  // A file of tests holds a whole subject, its titles and worked examples with it.
  test: { file: { median: 100, ninth: 220 }, function: { median: 8, ninth: 30 } },
};
const LONG = 300;
const REASON = /\bLong because\b/;
const HEADER_LINES = 15;

const tracked = execFileSync('git', ['ls-files', 'src', 'test'], { encoding: 'utf8' }).split('\n');
const files = tracked.filter((path) => /\.(ts|tsx|js)$/.test(path) && !path.endsWith('.d.ts'));

function functionLines(path, text) {
  const lineAt = (offset) => text.slice(0, offset).split('\n').length;
  const lines = [];
  const count = ({ start, end, body }) => {
    if (body) lines.push(lineAt(end) - lineAt(start) + 1);
  };
  const { program, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path}: ${errors[0].message}`);
  new Visitor({ FunctionDeclaration: count, FunctionExpression: count, ArrowFunctionExpression: count }).visit(program);
  return lines;
}

const sorted = (numbers) => numbers.toSorted((a, b) => a - b);
const shareOf = (numbers, share) => sorted(numbers)[Math.ceil(numbers.length * share) - 1] ?? 0;

const faults = [];
function judge(what, numbers, { median, ninth }) {
  const [middle, nine, most] = [shareOf(numbers, 0.5), shareOf(numbers, 0.9), shareOf(numbers, 1)];
  console.log(`${what}: ${numbers.length}, median ${middle} lines (at most ${median}), nine in ten ${nine} (at most ${ninth}), longest ${most}`);
  if (middle > median) faults.push(`${what}: the median is ${middle} lines, more than ${median}`);
  if (nine > ninth) faults.push(`${what}: nine in ten have up to ${nine} lines, more than ${ninth}`);
}

for (const [room, promised] of Object.entries(PROMISED)) {
  const fileLines = [];
  const functions = [];
  for (const path of files.filter((file) => file.startsWith(`${room}/`))) {
    const text = readFileSync(path, 'utf8');
    const lines = text.split('\n').length - 1;
    fileLines.push(lines);
    functions.push(...functionLines(path, text));
    const header = text.split('\n').slice(0, HEADER_LINES).join('\n');
    if (lines > LONG && !REASON.test(header))
      faults.push(`${path}: ${lines} lines; past ${LONG} its header says why ('Long because …'), or it is divided`);
  }
  judge(`files of ${room}`, fileLines, promised.file);
  judge(`functions of ${room}`, functions, promised.function);
}
if (faults.length > 0) {
  console.error(faults.join('\n'));
  process.exit(1);
}
