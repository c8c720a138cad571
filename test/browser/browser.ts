/**
 * A Chromium for the tests. Looked for in this order: the program that TINWRIGHT_CHROMIUM names, one installed
 * on the system, the one inside the @sparticuz/chromium package (x64 Linux). Without any, the tests fail.
 */
import { accessSync, constants, existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { delimiter, join, resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
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
function systemChromium(path = process.env.PATH ?? ''): string | null {
  const places = path.split(delimiter).flatMap((folder) => PROGRAMS.map((program) => join(folder, program)));
  return [...places, ...ELSEWHERE].find(canRun) ?? null;
}

interface Program {
  executablePath: string;
  args: string[];
  env?: Record<string, string>;
}

/** The package's own settings look for fonts elsewhere, and without any font text has no width. */
function fontSettings(): Record<string, string> {
  const file = join(CACHE, 'fonts.conf');
  const dirs = `<dir>${join(CACHE, 'fonts')}</dir><cachedir>${join(CACHE, 'fonts-cache')}</cachedir>`;
  writeFileSync(file, `<?xml version="1.0"?><fontconfig>${dirs}</fontconfig>\n`);
  const own = Object.entries(process.env).filter(
    (entry): entry is [string, string] => entry[1] !== undefined,
  );
  return { ...Object.fromEntries(own), FONTCONFIG_FILE: file };
}

/** One test file at a time: the others would start a program that is half unpacked. */
async function alone<T>(work: () => Promise<T>): Promise<T> {
  const lock = `${CACHE}.lock`;
  for (let tries = 0; tries < 300; tries += 1) {
    try {
      mkdirSync(lock);
      break;
    } catch {
      await pause(100);
    }
  }
  try {
    return await work();
  } finally {
    rmSync(lock, { recursive: true, force: true });
  }
}

/** Unpacks the package's program with the libraries it brings, into the project's own cache. */
async function packagedChromium(): Promise<Program> {
  mkdirSync(CACHE, { recursive: true });
  const before = { TMPDIR: process.env.TMPDIR, AWS_EXECUTION_ENV: process.env.AWS_EXECUTION_ENV };
  process.env.TMPDIR = CACHE;
  process.env.AWS_EXECUTION_ENV = 'AWS_Lambda_nodejs20.x';
  try {
    const { default: packaged } = await import('@sparticuz/chromium');
    const executablePath = await alone(() => packaged.executablePath());
    const args = packaged.args.filter((arg) => arg !== '--single-process' && !arg.startsWith('--headless'));
    return { executablePath, args: [...args, '--no-sandbox'], env: fontSettings() };
  } finally {
    for (const [name, value] of Object.entries(before)) {
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
  }
}

/** The program by that order, unpacked if need be. Throws when there is none. */
export async function chosenChromium(): Promise<Program> {
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
  return chromium.launch({ ...(await chosenChromium()), headless: true });
}
