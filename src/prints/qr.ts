/**
 * A QR code (ISO/IEC 18004, from memory) as one path: a stroke for every run of dark modules. The four modules
 * of empty margin that readers need are part of its box.
 */
import { create } from 'qrcode/lib/core/qrcode.js';
import type { PathStep, Surface } from './sheet/surface.ts';
import { MM_PER_PT } from './sheet/units.ts';

const QUIET_MODULES = 4;

export interface QrCode {
  /** Modules along a side, with the empty margin. */
  modules: number;
  /** Dark runs: row, first column and length, in modules from the box's corner. */
  runs: { row: number; column: number; length: number }[];
}

/** Each sheet's address, on both papers and in every house style; more than a large kitchen has pages. */
const MOST_CODES = 2000;
const known = new Map<string, QrCode>();

/** The code of a text, with a quarter of it spare for smudges and flour; worked out once and never changed. */
export function qrCode(text: string): QrCode {
  const found = known.get(text);
  if (found !== undefined) return found;
  if (known.size >= MOST_CODES) known.clear();
  const code = freshCode(text);
  known.set(text, code);
  return code;
}

function freshCode(text: string): QrCode {
  const { size, data } = create(text, { errorCorrectionLevel: 'Q' }).modules;
  const runs: QrCode['runs'] = [];
  for (let row = 0; row < size; row += 1) {
    let start: number | null = null;
    for (let column = 0; column <= size; column += 1) {
      const dark = column < size && data[row * size + column] === 1;
      if (dark) start ??= column;
      else if (start !== null) {
        runs.push({ row: row + QUIET_MODULES, column: start + QUIET_MODULES, length: column - start });
        start = null;
      }
    }
  }
  return { modules: size + 2 * QUIET_MODULES, runs };
}

/** Draws the code in a square box: a stroke one module wide for every run, half the size of outlined boxes. */
export function drawQr(
  surface: Surface,
  code: QrCode,
  box: { xMm: number; yMm: number; sideMm: number },
  ink: string,
): void {
  const module = box.sideMm / code.modules;
  const steps = code.runs.flatMap(({ row, column, length }): PathStep[] => {
    const x = box.xMm + column * module;
    const y = box.yMm + (row + 0.5) * module;
    return [
      { op: 'move', x, y },
      { op: 'line', x: x + length * module, y },
    ];
  });
  surface.path(steps, { stroke: ink, lineWidthPt: module / MM_PER_PT });
}
