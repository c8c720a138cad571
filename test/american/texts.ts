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
