/**
 * Units at the edges: everything inside is mm, mm², mL, g, °C and minutes; these factors convert when content
 * is read or a figure is printed. Exact by definition unless said otherwise.
 * Sources: NIST SP 811 (2008) B.8 and NIST Handbook 44 App. C (inch, ounce, pound, US measures);
 * SI 1995/1804 (UK pint and fluid ounce).
 */
export type LengthUnit = 'mm' | 'cm' | 'in';
export type MassUnit = 'g' | 'kg' | 'oz' | 'lb';
export type VolumeUnit =
  | 'ml'
  | 'l'
  | 'tsp'
  | 'tbsp'
  | 'cup'
  | 'us fl oz'
  | 'uk fl oz'
  | 'uk pint'
  | 'us pint'
  | 'us qt';

export const MM_PER: Record<LengthUnit, number> = { mm: 1, cm: 10, in: 25.4 };

export const G_PER: Record<MassUnit, number> = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 };

/** Spoons and cups are the metric spoon and the US customary cup (236.588 mL). */
export const ML_PER: Record<VolumeUnit, number> = {
  ml: 1,
  l: 1000,
  tsp: 5,
  tbsp: 15,
  cup: 236.5882365,
  'us fl oz': 29.5735295625,
  'uk fl oz': 28.4130625,
  'uk pint': 568.26125,
  'us pint': 473.176473,
  'us qt': 946.352946,
};

export const MM3_PER_ML = 1000;

/** Degrees Celsius from degrees Fahrenheit, exact. */
export function celsiusFromFahrenheit(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9;
}

/** Degrees Fahrenheit from degrees Celsius, exact. */
export function fahrenheitFromCelsius(celsius: number): number {
  return (celsius * 9) / 5 + 32;
}
