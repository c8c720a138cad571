/** The texts of a site's data and of prints, each with where it stands. */
import type { Print, Surface } from '../../src/prints/sheet/surface.ts';

export interface Said {
  where: string;
  text: string;
}

/** Addresses, ids and what the baker wrote are no words of ours. */
const NOT_OURS: ReadonlySet<string> = new Set([
  ...[
    'id',
    'code',
    'path',
    'paths',
    'anchor',
    'picture',
    'icon',
    'siteUrl',
    'base',
    'section',
    'unit',
    'kind',
  ],
  ...['methodMarkdown', 'methodHtml', 'notesHtml', 'why', 'summary', 'structured', 'html', 'logo', 'sheets'],
]);

/** Drawings say what stands between their tags. */
const spoken = (text: string): string => text.replace(/<[^>]*>/g, ' ').trim();

/** Names of files are the same in every locale. */
const withoutFiles = (text: string): string => text.replace(/[\w.-]+\.(?:pdf|csv|json|yaml)\b/g, '');

/** Every text of plain data, by its path of keys; `left` names further keys that are left out. */
export function textsOfData(value: unknown, left: ReadonlySet<string> = new Set(), where = ''): Said[] {
  if (typeof value === 'string') return [{ where, text: withoutFiles(spoken(value)) }];
  if (typeof value !== 'object' || value === null || value instanceof RegExp) return [];
  return Object.entries(value).flatMap(([key, one]) =>
    NOT_OURS.has(key) || left.has(key) || /Path$/.test(key) ? [] : textsOfData(one, left, `${where}.${key}`),
  );
}

const spaced = (text: unknown): string => String(text).replaceAll('\u00a0', ' ');

const METRIC_UNITS: ReadonlySet<unknown> = new Set(['g', 'mm', 'mL']);

/** Figures that stand bare under a heading in inches, ounces or cups, and still say their metric value. */
export function bareMetric(value: unknown, left: ReadonlySet<string> = new Set(), where = ''): string[] {
  if (typeof value !== 'object' || value === null) return [];
  const { unit, value: amount, text, figure } = value as Record<string, unknown>;
  const said = typeof text === 'string' ? Number(text.replaceAll(',', '').replace('−', '-')) : Number.NaN;
  const isBare =
    METRIC_UNITS.has(unit) &&
    typeof amount === 'number' &&
    amount !== 0 &&
    Math.abs(said) > Math.abs(amount) / 2;
  const copied =
    typeof figure === 'object' &&
    figure !== null &&
    'text' in figure &&
    typeof text === 'string' &&
    spaced(text) !== spaced(figure.text)
      ? [`${where}: ‘${text}’ beside ‘${figure.text}’`]
      : [];
  const below = Object.entries(value).flatMap(([key, one]) =>
    left.has(key) ? [] : bareMetric(one, left, `${where}.${key}`),
  );
  return [...(isBare ? [`${where}: ${text} ${unit}`] : []), ...copied, ...below];
}

const FRACTIONS: Record<string, number> = {
  ...{ '½': 1 / 2, '¼': 1 / 4, '¾': 3 / 4, '⅓': 1 / 3, '⅔': 2 / 3 },
  ...{ '⅛': 1 / 8, '⅜': 3 / 8, '⅝': 5 / 8, '⅞': 7 / 8 },
};

/** '2½', '1,005', '3/16' as a number; NaN for anything else. */
function numberIn(text: string): number {
  const [, whole = '', over, sign = ''] = /^[−+]?([\d,.]*)(?:\/(\d+))?([½¼¾⅓⅔⅛⅜⅝⅞]?)$/.exec(text) ?? [];
  if (whole === '' && sign === '') return Number.NaN;
  const number = Number(whole.replaceAll(',', '') || 0) + (FRACTIONS[sign] ?? 0);
  return over === undefined ? number : number / Number(over);
}

/** How many of ours one is, and how far rounding may take it: an eighth and a sixteenth of an inch, a tenth of an ounce. */
const TURNED: Record<string, { of: number; within: number }> = {
  mm: { of: 25.4, within: 0.07 },
  g: { of: 28.349523125, within: 0.06 },
  mL: { of: 236.5882365, within: 0.26 },
};

/** Bare figures whose text is not their own value turned once: `count` were looked at. */
export function turnedWrong(
  value: unknown,
  left: ReadonlySet<string> = new Set(),
  where = '',
): { count: number; faults: string[] } {
  if (typeof value !== 'object' || value === null) return { count: 0, faults: [] };
  const { unit, value: amount, text } = value as Record<string, unknown>;
  const turn = typeof unit === 'string' ? TURNED[unit] : undefined;
  const said = typeof text === 'string' ? numberIn(text) : Number.NaN;
  const asked = turn !== undefined && typeof amount === 'number' && !Number.isNaN(said);
  const wanted = asked ? Math.abs(amount) / turn.of : 0;
  const wrong = asked && Math.abs(said - wanted) > Math.max(turn.within, wanted * 0.025);
  const all = Object.entries(value)
    .filter(([key]) => !left.has(key))
    .map(([key, one]) => turnedWrong(one, left, `${where}.${key}`));
  return {
    count: all.reduce((sum, { count }) => sum + count, asked ? 1 : 0),
    faults: [
      ...(wrong ? [`${where}: ‘${text}’ for ${amount} ${unit}`] : []),
      ...all.flatMap(({ faults }) => faults),
    ],
  };
}

/** What a print says, element by element, however its lines are broken. */
export function textsOfPrint({ path, title, subject, pages }: Print): Said[] {
  const said: Said[] = [title, subject].map((text) => ({ where: path, text }));
  pages.forEach((page, at) => {
    const where = `${path}, page ${at + 1}`;
    const open: string[][] = [[]];
    const close = (body: () => void): void => {
      open.push([]);
      body();
      const runs = open.pop() ?? [];
      if (runs.length > 0) said.push({ where, text: runs.join(' ') });
    };
    const surface: Surface = {
      text: ({ text }) => open.at(-1)?.push(text),
      path: () => undefined,
      within: (_, { alt }, body) => {
        if (alt !== undefined) said.push({ where, text: alt });
        close(body);
      },
      artifact: (body) => close(body),
      clip: (_, body) => body(),
      link: (_, __, ___, body) => body(),
      anchor: () => undefined,
      bookmark: () => undefined,
    };
    close(() => page.draw(surface, { xMm: 0, yMm: 0 }));
  });
  return said.map((one) => ({ ...one, text: withoutFiles(one.text) }));
}
