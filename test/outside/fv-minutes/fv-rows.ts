/** Rows of the finite-volume table, with the tin each stands for. */
import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import type { CoreKind } from '../../../src/domain/bake-log.ts';
import type { Tin } from '../../../src/domain/tin.ts';

export interface FvRow {
  tin: Tin;
  sizeIn: number;
  heightMm: number;
  ovenC: number;
  coreText: string;
  core: CoreKind;
  min95: number;
}

const file = readFileSync(new URL('fv_minutes.csv', import.meta.url), 'utf8');
const rows: Record<string, string>[] = parse(file, { columns: true });

export const FV_ROWS: FvRow[] = rows.map((row) => {
  const acrossMm = Number(row.size_in) * 25.4;
  const coreText = row.core ?? '';
  return {
    tin: {
      id: `${row.shape}-${row.size_in}`,
      name: `${row.shape} ${row.size_in} in`,
      shape: row.shape === 'sq' ? { kind: 'square', sideMm: acrossMm } : { kind: 'round', acrossMm },
      depthMm: 102,
      owned: 1,
      unit: 'in',
    },
    sizeIn: Number(row.size_in),
    heightMm: Number(row.height_in) * 25.4,
    ovenC: Number(row.oven_C),
    coreText,
    core: coreText === 'none' ? 'none' : coreText.startsWith('hollow') ? 'hollow' : 'solid',
    min95: Number(row.min_95),
  };
});
