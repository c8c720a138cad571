/** Cells of the booklet's tables. */
import type { Figure } from '../figure.ts';
import type { TableCell } from './booklet.types.ts';

export const figureCell = (figure: Figure): TableCell => ({
  figure,
  text: figure.text,
  small: '',
  tone: 'plain',
});

export const wordCell = (text: string, tone: TableCell['tone'] = 'plain'): TableCell => ({
  figure: null,
  text,
  small: '',
  tone,
});
