// Which browser the tests will use: the one named in the environment, the system's, or the npm package's own.
import { accessSync, constants } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

function runnable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function packaged() {
  try {
    return createRequire(import.meta.url).resolve('@sparticuz/chromium');
  } catch {
    return undefined;
  }
}

const named = process.env.TINWRIGHT_BROWSER;
const folders = (process.env.PATH ?? '').split(delimiter);
const system = folders.flatMap((folder) => NAMES.map((name) => join(folder, name))).find(runnable);
const found = (named && runnable(named) && named) || system || packaged();
if (!found) {
  console.error('no browser: set TINWRIGHT_BROWSER, install chromium, or run npm ci with its dev dependencies');
  process.exit(1);
}
console.log(found);
