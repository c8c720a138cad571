/**
 * A view for those who measure in inches, ounces, pounds and cups: the same values, shown in the units of the
 * kitchen's country. Values stay metric, since data files carry them; showing twice changes nothing more.
 */
import type { Kitchen, Locale } from '../domain/kitchen.ts';
import { cupsText } from '../wording/cups.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatOunces } from '../wording/ounces.ts';
import { inchesText, usUnitsInSentence } from '../wording/us-units.ts';
import type { Figure, FigureUnit } from './figure.ts';

export type Mass = 'g' | 'oz';

const isFigure = (value: object): value is Figure =>
  'unit' in value && 'value' in value && 'text' in value && typeof value.text === 'string';

/** What the baker wrote, names and places are kept; so is working, which is arithmetic in metric units. */
const KEPT: ReadonlySet<string> = new Set([
  ...['id', 'tinId', 'finishId', 'code', 'path', 'name', 'tinName', 'title', 'reference'],
  ...['methodMarkdown', 'methodHtml', 'notes', 'notesHtml', 'note', 'why', 'html', 'structured', 'logo'],
]);

/** Notes and the like as one text are the baker's; in a list or a table they are ours. */
const isKept = (key: string, value: unknown): boolean => typeof value === 'string' && KEPT.has(key);

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

/** A cell of a table that says its figure once more as text. */
const isCell = (value: object): value is { figure: Figure; text: string } =>
  'figure' in value &&
  typeof value.figure === 'object' &&
  value.figure !== null &&
  isFigure(value.figure) &&
  'text' in value &&
  value.text === value.figure.text;

/** How to show: the unit of weights, and names that no sentence may turn. */
interface Home {
  mass: Mass;
  names: readonly string[];
  warning: (message: string, names: readonly string[]) => string;
}

/** Computations warn in British English; their sentences are known by the code beside them. */
const isWarning = (value: object): value is { code: string; message: string } =>
  'code' in value && 'message' in value && typeof value.message === 'string';

function shown(value: unknown, home: Home): unknown {
  if (typeof value === 'string') return usUnitsInSentence(value, home.mass);
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map((one) => shown(one, home));
  if (isFigure(value)) return homeFigure(value, home.mass);
  if (isCell(value)) {
    const figure = homeFigure(value.figure, home.mass);
    return { ...value, figure, text: figure.text };
  }
  const said = isWarning(value) ? { ...value, message: home.warning(value.message, home.names) } : value;
  return Object.fromEntries(
    Object.entries(said).map(([key, inner]) => [key, isKept(key, inner) ? inner : shown(inner, home)]),
  );
}

/** What a kitchen weighs in unless a print is asked for in another unit. */
export const usualMass = ({ locale }: { locale: Locale }): Mass => wordsFor(locale).units.mass;

/** The view as this kitchen's country measures; British views are given back as they are. */
export function inHomeUnits<View>(
  view: View,
  { locale, tins }: Pick<Kitchen, 'locale' | 'tins'>,
  mass: Mass = usualMass({ locale }),
): View {
  const { units, warning } = wordsFor(locale);
  if (units.height === 'mm') return view;
  return shown(view, { mass, warning, names: tins.map(({ name }) => name) }) as View;
}
