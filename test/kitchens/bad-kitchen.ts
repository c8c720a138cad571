/**
 * A bad kitchen is a good one (good/minimal) with one mistake, written down in bad/NAME/mistake.txt:
 *   edit FILE        then lines '- text as it stands' and '+ text instead' (a block of each, once in the file)
 *   write FILE       then lines '| text'
 *   remove PATH      a file or folder; '.' is the whole kitchen
 *   link PATH TO     a symbolic link
 *   pad FILE BYTES   comment lines up to this size
 *   repeat FILE COUNT  then lines '| text', at the end so many times, # being the number
 *   bytes FILE HEX…  these bytes at the end
 * expected.txt beside it holds the exact messages.
 */
import { appendFileSync, cpSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const HERE = dirname(fileURLToPath(import.meta.url));
const BAD = join(HERE, 'bad');
const BASE = join(HERE, 'good', 'minimal');

export const badKitchens = (): string[] => readdirSync(BAD).sort();

export const expectedMessages = (name: string): string => readFileSync(join(BAD, name, 'expected.txt'), 'utf8').trimEnd();

interface Step {
  verb: string;
  args: string[];
  lines: string[];
}

function stepsOf(text: string): Step[] {
  const steps: Step[] = [];
  for (const line of text.split('\n')) {
    if (line === '' || line.startsWith('#')) continue;
    const last = steps[steps.length - 1];
    if (/^[-+|]( |$)/.test(line)) last?.lines.push(line);
    else {
      const [verb = '', ...args] = line.split(' ');
      steps.push({ verb, args, lines: [] });
    }
  }
  return steps;
}

function block(lines: readonly string[], sign: string): string {
  return lines
    .filter((line) => line.startsWith(sign))
    .map((line) => line.slice(2))
    .join('\n');
}

function edit(path: string, lines: readonly string[]): void {
  const before = readFileSync(path, 'utf8');
  const old = block(lines, '-');
  if (before.split(old).length !== 2) throw new Error(`'${old}' stands ${before.split(old).length - 1} times in ${path}`);
  writeFileSync(path, before.replace(old, () => block(lines, '+')));
}

function pad(path: string, bytes: number): void {
  const missing = bytes - statSync(path).size;
  appendFileSync(path, '# padding\n'.repeat(Math.ceil(missing / 10)).slice(0, missing - 1).concat('\n'));
}

function take({ verb, args, lines }: Step, folder: string): void {
  const [file = '', ...rest] = args;
  const path = join(folder, file);
  if (verb === 'edit') edit(path, lines);
  else if (verb === 'write') {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, lines.map((line) => `${line.slice(2)}\n`).join(''));
  } else if (verb === 'remove') rmSync(path, { recursive: true });
  else if (verb === 'link') symlinkSync(rest[0] ?? '', path);
  else if (verb === 'pad') pad(path, Number(rest[0]));
  else if (verb === 'repeat') {
    const text = lines.map((line) => `${line.slice(2)}\n`).join('');
    appendFileSync(path, Array.from({ length: Number(rest[0]) }, (_, at) => text.replaceAll('#', String(at))).join(''));
  } else if (verb === 'bytes') appendFileSync(path, Uint8Array.from(rest.map((hex) => Number.parseInt(hex, 16))));
  else throw new Error(`No such step: ${verb}`);
}

/** Lays the bad kitchen out in a folder that does not exist yet. */
export function layOutBadKitchen(name: string, folder: string): void {
  cpSync(BASE, folder, { recursive: true });
  for (const step of stepsOf(readFileSync(join(BAD, name, 'mistake.txt'), 'utf8'))) take(step, folder);
}
