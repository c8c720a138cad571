// Every installed package carries a licence that goes with this project's MIT; fails naming those that do not.
import { existsSync, readFileSync } from 'node:fs';

const ALLOWED = ['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', 'BSL-1.0', 'OFL-1.1', '0BSD', 'CC0-1.0', 'BlueOak-1.0.0', 'Python-2.0', 'Zlib'];
// Its terms cover its own files, used here as they come: tools may have it, what ships is named below.
const IN_TOOLS = [...ALLOWED, 'MPL-2.0'];
const NAMED = {
  // Draws the site's link pictures at build time, unmodified; none of it goes into what is built.
  '@resvg/resvg-wasm': 'MPL-2.0',
  // Its package.json names none; its LICENSE file is the MIT licence.
  'png-js': 'MIT',
};

/** An SPDX expression of AND, OR and brackets, as far as packages use them. */
function isAllowed(expression, allowed) {
  const text = expression.replace(/^\((.*)\)$/, '$1');
  if (text.includes(' OR ')) return text.split(' OR ').some((part) => isAllowed(part, allowed));
  return text.split(' AND ').every((part) => allowed.includes(part));
}

function licenceOf(path, entry) {
  const file = `${path}/package.json`;
  const said = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : entry;
  return said.license?.type ?? said.license ?? said.licenses?.map(({ type }) => type).join(' OR ') ?? null;
}

const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8'));
const counts = new Map();
const refused = [];
for (const [path, entry] of Object.entries(packages)) {
  if (path === '') continue;
  const name = path.replace(/^.*node_modules\//, '');
  const licence = licenceOf(path, entry) ?? NAMED[name];
  counts.set(licence, (counts.get(licence) ?? 0) + 1);
  const isNamed = NAMED[name] === licence;
  const isTool = entry.dev === true || entry.devOptional === true;
  if (!licence || !(isNamed || isAllowed(licence, isTool ? IN_TOOLS : ALLOWED)))
    refused.push(`${name} ${entry.version}: ${licence ?? 'no licence named'}${isTool ? '' : ', and it ships'}`);
}
console.log([...counts].sort((a, b) => b[1] - a[1]).map(([licence, count]) => `${licence} ${count}`).join(', '));
if (refused.length > 0) {
  console.error(`Not among the licences that go with this project (.ci/licences.mjs):\n  ${refused.join('\n  ')}`);
  process.exit(1);
}
