/** The words of the finishing chart; lengths and weights come as text with their unit. A missing key does not compile. */
import type { FinishKind } from '../../domain/finish.ts';

export interface FinishingWords {
  title: string;
  summary: (height: string, layers: number) => string;
  uses: {
    filling: (thickness: string) => string;
    dam: (bead: string) => string;
    /** Crumb coat and final coat; an empty crumb for one coat alone. */
    coating: (crumb: string, final: string) => string;
    /** Of a glaze, which is poured and not spread. */
    poured: (thickness: string) => string;
    rolled: (thickness: string) => string;
    brushed: (perFace: string) => string;
  };
  kinds: Record<FinishKind, string>;
  sheetRound: (across: string) => string;
  sheetOblong: (across: string, other: string) => string;
  strip: (length: string, height: string) => string;
  /** 'from 6 whites' */
  fromEggs: (count: number, part: string) => string;
  parts: (list: string) => string;
  /** A finish of one ingredient, bought as it is used. */
  onePart: string;
  keeps: (days: number, chilled: boolean) => string;
  settings: {
    height: string;
    layers: string;
    dam: string;
    undercoat: string;
    board: string;
    box: string;
    ribbon: string;
    noDam: string;
    heightOf: (height: string) => string;
    layersOf: (layers: number) => string;
    boardOf: (margin: string, thickness: string) => string;
    boxOf: (clearance: string) => string;
    ribbonOf: (overlap: string) => string;
  };
  notes: {
    cake: string;
    filling: string;
    coat: string;
    poured: (undercoat: string) => string;
    made: string;
    rolled: (undercoat: string) => string;
    board: string;
    dome: string;
    parts: (step: string, fineStep: string) => string;
  };
  leftOut: (tin: string) => string;
  cautions: {
    chilled: string;
    supports: string;
    hot: string;
    heavy: string;
  };
}
