/**
 * Metric sizes and weights in a sentence as Americans measure: inches to an eighth (a sixteenth below one inch),
 * ounces as a scale reads them, pounds for kilograms. What stands in brackets beside inches or ounces stays metric.
 */
import { G_PER, ML_PER, MM_PER } from '../domain/units.ts';
import { cupsText } from './cups.ts';
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
/** Not in the middle of a number, nor in brackets behind inches, ounces, pounds or cups, or at the very start. */
const FREE = '(?<!(?:^|(?:in|oz|lb|cups)[ \\u00a0])\\([^()]*)(?<![\\d.,])';
/** '65 mm (2½ in)': both are there already. */
const BOTH = new RegExp(`${NUMBER}${GAP}(?:mm|cm) \\(([^()]*in)\\)`, 'g');
/** '440 × 360 mm', '2 to 4 mm', '65 mm'; not the '(27.9 cm)' beside inches. */
const LENGTH = new RegExp(`${FREE}((?:${NUMBER} (?:×|to|or) )*)(${NUMBER})(${GAP})(mm|cm)\\b(?![²³/])`, 'g');
const MASS = new RegExp(`${FREE}(${NUMBER})(${GAP})(kg|g)\\b(?!/)`, 'g');
const PER_AREA = new RegExp(`(${NUMBER})(${GAP})g/cm²`, 'g');
const LIQUID = new RegExp(`${FREE}(${NUMBER})(${GAP})(ml|mL|l|L)\\b(?!/)`, 'g');

const CM2_PER_IN2 = (MM_PER.in / MM_PER.cm) ** 2;

const overArea = (_all: string, number: string, gap: string): string =>
  `${formatNumber((numberOf(number) / G_PER.oz) * CM2_PER_IN2, 3)}${gap}oz/in²`;

/** What a pan holds, in mL, is told in cups; bottles and cartons, in ml and l, in quarts from one up, else fluid ounces. */
function inQuarts(_all: string, number: string, gap: string, unit: string): string {
  if (unit === 'mL') return `${cupsText(numberOf(number))}${gap}cups`;
  const ml = numberOf(number) * (/^m/.test(unit) ? ML_PER.ml : ML_PER.l);
  const quarts = ml / ML_PER['us qt'];
  return quarts >= 1
    ? `${formatNumber(quarts, 1)}${gap}qt`
    : `${formatNumber(ml / ML_PER['us fl oz'], 1)}${gap}fl oz`;
}

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
  const plain = text.replace(BOTH, '$1').replace(LENGTH, inInches).replace(LIQUID, inQuarts);
  return mass === 'g' ? plain : plain.replace(MASS, inPounds).replace(PER_AREA, overArea);
}

function turned(value: unknown): unknown {
  if (typeof value === 'string') return usUnitsInSentence(value);
  if (Array.isArray(value)) return value.map(turned);
  if (typeof value === 'function') return (...parts: unknown[]) => turned(value(...parts));
  if (typeof value !== 'object' || value === null || value instanceof RegExp) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, turned(one)]));
}

/** A locale's words whose functions are given metric figures, in American units. */
export const withUsUnits = <Words extends object>(words: Words): Words => turned(words) as Words;
