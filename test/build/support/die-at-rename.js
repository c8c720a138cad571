/**
 * Loaded before the program (node --import): the process kills itself as SIGKILL would, right after its n-th rename
 * below a folder. Renames are what a swap is made of.
 */
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

const { DIE_FOLDER: folder = '', DIE_AFTER: after = '1' } = process.env;
const rename = fs.renameSync;
let renames = 0;
fs.renameSync = (from, to) => {
  rename(from, to);
  if (!String(to).startsWith(folder)) return;
  renames += 1;
  if (renames === Number(after)) process.kill(process.pid, 'SIGKILL');
};
syncBuiltinESMExports();
