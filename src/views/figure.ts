/**
 * A figure is a value with the text that every output shows for it, so that a page, a PDF and the planner
 * cannot round differently. `value` is what CSV and JSON carry, in `unit`.
 */
export type FigureUnit =
  | 'mm'
  | 'mm2'
  | 'mL'
  | 'mL2'
  | 'g'
  | 'g/mL'
  | 'eggs'
  | 'min'
  | 'C'
  | 'F'
  | 'gas'
  | 'share'
  | 'count'
  | 'minor'
  | 'kWh'
  | 'h'
  | 'ratio'
  | 'kJ'
  | 'kcal'
  | 'mg'
  | 'days'
  | 'W/mK'
  | 'kg/m3'
  | 'kJ/kgK'
  | 'mm2/s';

export interface Figure {
  value: number;
  unit: FigureUnit;
  /** As printed, without the unit unless the unit is part of how people say it (⅔, 2¾ in). */
  text: string;
}

/** A caution printed beside what it concerns, in the same type size, with the word. */
export interface Caution {
  code: string;
  text: string;
}

export interface Named {
  id: string;
  name: string;
}
