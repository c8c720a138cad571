/** Cells of a wall table. */
import type { Figure } from './figure.ts';
import type { WallCell } from './wall.types.ts';

export const figureCell = (figure: Figure): WallCell => ({ figure, text: figure.text, tone: 'plain' });

export const wordCell = (text: string, tone: WallCell['tone'] = 'plain'): WallCell => ({
  figure: null,
  text,
  tone,
});
