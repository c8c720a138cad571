/**
 * Which prints go to others: charts, cards, guides, booklet, wall references and templates. Never orders, which are a
 * customer's, never labels, which speak for one kitchen's food, and nothing that is not named here.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { sha256 } from '../../read/sha256.ts';
import type { Report } from '../output/report.ts';
import { Stopped } from '../unexpected.ts';

/** Folders of prints that can be handed on. */
const HANDED_ON = [
  'tin-charts',
  'recipe-cards',
  'finish-cards',
  'bake-guides',
  'finishing',
  'booklet',
  'templates',
  'cutting-guides',
  'wall',
];

export interface SoldPrint {
  /** Below the set's own folder. */
  path: string;
  bytes: Uint8Array;
  sha256: string;
}

/** Path within the set, or null for what stays at home; `style` is a further house style's id. */
export function soldPath(path: string, style: string | null): string | null {
  const within = `print/${style === null ? '' : `in-${style}/`}`;
  if (!path.startsWith(within)) return null;
  const rest = path.slice(within.length);
  return HANDED_ON.includes(rest.split('/')[0] ?? '') ? rest : null;
}

/** The prints as the report has them. Throws when one is not what the build made. */
export function soldPrints(outputDir: string, report: Report, style: string | null): SoldPrint[] {
  return report.files.flatMap((file) => {
    const path = soldPath(file.path, style);
    if (path === null) return [];
    const bytes = readFileSync(join(outputDir, file.path));
    if (sha256(bytes) !== file.sha256)
      throw new Stopped(
        `${join(outputDir, file.path)} was changed while it was being packed. Run the command again.`,
      );
    return [{ path, bytes, sha256: file.sha256 }];
  });
}
