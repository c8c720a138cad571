/**
 * A view for those who measure in inches, ounces, pounds and cups: the same values, shown in the units of the
 * kitchen's country. Values stay metric, since data files carry them; showing twice changes nothing more.
 */
import type { Locale } from '../domain/kitchen.ts';
import { cupsText } from '../wording/cups.ts';
import { formatOunces } from '../wording/ounces.ts';
import { inchesText, usUnitsInSentence } from '../wording/us-units.ts';
import type { Figure, FigureUnit } from './figure.ts';

export type Mass = 'g' | 'oz';

const isFigure = (value: object): value is Figure =>
  'unit' in value && 'value' in value && 'text' in value && typeof value.text === 'string';

/** What the baker wrote, names and places are kept; so is working, which is arithmetic in metric units. */
const KEPT: ReadonlySet<string> = new Set([
  ...['id', 'tinId', 'finishId', 'code', 'path', 'name', 'tinName', 'title', 'reference'],
  ...['methodMarkdown', 'methodHtml', 'notesHtml', 'note', 'why', 'html', 'structured', 'logo'],
]);

/** Notes as one text are the baker's; in a list they are ours. */
const isKept = (key: string, value: unknown): boolean =>
  KEPT.has(key) || (key === 'notes' && typeof value === 'string');

const numberIn = (text: string): number => Number(text.replaceAll(',', '').replace('−', '-'));

/** Metric texts say the value itself; the same in inches, ounces or cups is a number many times smaller. */
const isMetric = (text: string, value: number): boolean => Math.abs(numberIn(text)) > Math.abs(value) / 2;

type Show = (value: number, text: string) => string;

const BARE: Partial<Record<FigureUnit, Show>> = {
  mm: (value) => inchesText(value),
  mL: (value) => cupsText(value),
};
const BARE_WITH_OUNCES: Partial<Record<FigureUnit, Show>> = {
  ...BARE,
  g: (_value, text) => formatOunces(numberIn(text)),
};

/** Figures with their unit in the text are sentences. */
function homeFigure(figure: Figure, mass: Mass): Figure {
  if (!/^[−+\d.,]+$/.test(figure.text)) return { ...figure, text: usUnitsInSentence(figure.text, mass) };
  const show = (mass === 'oz' ? BARE_WITH_OUNCES : BARE)[figure.unit];
  if (show === undefined || !isMetric(figure.text, figure.value)) return figure;
  return { ...figure, text: show(figure.value, figure.text) };
}

function shown(value: unknown, mass: Mass): unknown {
  if (typeof value === 'string') return usUnitsInSentence(value, mass);
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map((one) => shown(one, mass));
  if (isFigure(value)) return homeFigure(value, mass);
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [key, isKept(key, inner) ? inner : shown(inner, mass)]),
  );
}

/** What a kitchen weighs in unless a print is asked for in another unit. */
export const usualMass = ({ locale }: { locale: Locale }): Mass => (locale === 'en-US' ? 'oz' : 'g');

/** The view as this kitchen's country measures; British views are given back as they are. */
export const inHomeUnits = <View>(
  view: View,
  { locale }: { locale: Locale },
  mass: Mass = usualMass({ locale }),
): View => (locale === 'en-US' ? (shown(view, mass) as View) : view);
