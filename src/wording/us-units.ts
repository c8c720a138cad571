/**
 * Metric sizes and weights in a sentence as Americans measure: inches to an eighth (a sixteenth below one inch),
 * ounces as a scale reads them, pounds for kilograms. What stands in brackets beside inches or ounces stays metric.
 */
import { G_PER, MM_PER } from '../domain/units.ts';
import { formatEighths } from './fraction.ts';
import { formatNumber } from './number.ts';
import { formatOunces } from './ounces.ts';

const SIXTEENTHS = 16;

/** @example inchesText(63.5) // '2½' */
export function inchesText(lengthMm: number): string {
  const inches = Math.abs(lengthMm) / MM_PER.in;
  const parts = Math.round(inches * SIXTEENTHS);
  const size = inches < 1 && parts % 2 === 1 ? `${parts}/${SIXTEENTHS}` : formatEighths(inches);
  return lengthMm < 0 && size !== '0' ? `−${size}` : size;
}

const numberOf = (number: string): number => Number(number.replaceAll(',', '').replace('−', '-'));

const NUMBER = '−?\\d[\\d,]*(?:\\.\\d+)?';
const GAP = '[ \\u00a0]';
/** '65 mm (2½ in)': both are there already. */
const BOTH = new RegExp(`${NUMBER}${GAP}(?:mm|cm) \\(([^()]*in)\\)`, 'g');
/** '440 × 360 mm', '2 to 4 mm', '65 mm'; not the '(27.9 cm)' beside inches. */
const LENGTH = new RegExp(
  `(?<![(\\d.,])((?:${NUMBER} (?:×|to|or) )*)(${NUMBER})(${GAP})(mm|cm)\\b(?![²³/])`,
  'g',
);
const MASS = new RegExp(`(?<![(\\d.,])(${NUMBER})(${GAP})(kg|g)\\b(?!/)`, 'g');

function inInches(_all: string, before: string, last: string, gap: string, unit: string): string {
  const shown = (number: string): string => inchesText(numberOf(number) * (unit === 'cm' ? MM_PER.cm : 1));
  return `${before.replace(new RegExp(NUMBER, 'g'), shown)}${shown(last)}${gap}in`;
}

function inPounds(_all: string, number: string, gap: string, unit: string): string {
  if (unit === 'g') return `${formatOunces(numberOf(number))}${gap}oz`;
  return `${formatNumber((numberOf(number) * G_PER.kg) / G_PER.lb, 1)}${gap}lb`;
}

/**
 * Grams stay where `mass` is 'g'.
 * @example usUnitsInSentence('250 g of batter, 65 mm high') // '8.8 oz of batter, 2½ in high'
 */
export function usUnitsInSentence(text: string, mass: 'g' | 'oz' = 'oz'): string {
  const inches = text.replace(BOTH, '$1').replace(LENGTH, inInches);
  return mass === 'g' ? inches : inches.replace(MASS, inPounds);
}
