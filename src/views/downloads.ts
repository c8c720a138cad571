/** What can be printed or opened in a spreadsheet, grouped by what it is for. */
import { BOOKLET_FILE_WORDS } from '../wording/booklet/booklet-file-words.ts';
import { formatNumber } from '../wording/number.ts';
import { CARD_FILE_WORDS } from '../wording/recipe-card/card-file-words.ts';
import { bookletEntryName, bookletLinkText, isBookletFile } from './booklet-files.ts';
import { cardEntryName, cardLinkText } from './card-files.ts';
import type { Named } from './figure.ts';
import { type PageHead, pageHead } from './nav.ts';

/** A file of the build, by its path below the output folder: 'print/tin-charts/ID-A4.pdf'. */
export interface BuiltFile {
  path: string;
  byteCount: number;
}

export interface DownloadLink {
  /** From the site's root. */
  path: string;
  /** 'PDF, A4', 'CSV'. */
  text: string;
  sizeText: string;
}

export interface DownloadGroup {
  title: string;
  about: string;
  entries: { title: string; files: DownloadLink[] }[];
}

export interface DownloadsView {
  head: PageHead;
  groups: DownloadGroup[];
}

/** Where the site keeps its copy of a built file, so that it still works when only the site is published. */
const downloadPath = (builtPath: string): string => `files/${builtPath}`;

/** Bytes as people say them: 48300 is '48 kB', 1250000 is '1.3 MB'. */
function formatBytes(byteCount: number): string {
  if (byteCount >= 1_000_000) return `${formatNumber(byteCount / 1_000_000, 1)} MB`;
  return `${formatNumber(Math.max(1, byteCount / 1000), 0)} kB`;
}

const baseName = (path: string): string => path.slice(path.lastIndexOf('/') + 1);
const folderOf = (path: string): string => path.slice(0, Math.max(0, path.lastIndexOf('/')));
const extensionOf = (path: string): string => baseName(path).split('.').pop() ?? '';

const isLadder = (path: string): boolean => path.includes('/egg-ladders/');

const PAPERS: Readonly<Record<string, string>> = {
  a4: 'A4',
  letter: 'US Letter',
  a3: 'A3',
  a2: 'A2',
  '11x17': '11 × 17 in',
  '17x22': '17 × 22 in',
};
/** '…-a4.pdf', and '…-a2-on-a4.pdf' for a large sheet to be joined from small ones. */
const PAPER_PART = /[-.](a4|letter|a3|a2|11x17|17x22)(?:-on-(a4|letter))?(?=\.[a-z]+$)/i;

function paperText(path: string): string | null {
  const [, sheet, home] = PAPER_PART.exec(path) ?? [];
  const name = (id: string): string => PAPERS[id.toLowerCase()] ?? id;
  if (sheet === undefined) return null;
  return home === undefined ? name(sheet) : `${name(sheet)} to join from ${name(home)}`;
}

function linkText(path: string): string {
  const named = bookletLinkText(path) ?? cardLinkText(path);
  if (named !== null) return named;
  const kind = extensionOf(path).toUpperCase();
  const paper = paperText(path);
  const ladder = isLadder(path) ? `Egg ladder ${kind}` : kind;
  const what = path.startsWith('data/portions/stacks') ? `Stacks ${kind}` : ladder;
  return paper ? `${what}, ${paper}` : what;
}

/** The link to one built file. */
export function downloadLink(file: BuiltFile): DownloadLink {
  return { path: downloadPath(file.path), text: linkText(file.path), sizeText: formatBytes(file.byteCount) };
}

/** Prints first, then data; within each by path. */
function inOrder(a: BuiltFile, b: BuiltFile): number {
  const rank = ({ path }: BuiltFile): number =>
    ['pdf', 'ics', 'csv', 'json'].indexOf(extensionOf(path)) + (isLadder(path) ? 3 : 0);
  // '…-a3.pdf' goes before '…-a3-on-a4.pdf'.
  const stem = ({ path }: BuiltFile): string => path.slice(0, path.lastIndexOf('.'));
  return rank(a) - rank(b) || (stem(a) < stem(b) ? -1 : 1);
}

/** The sheet and the figures of one chart: prints first, its egg ladder last. */
export function filesOfChart(chartId: string, files: readonly BuiltFile[]): BuiltFile[] {
  const own = new RegExp(
    `^(print|data)/(tin-charts|egg-ladders)/${chartId}([-.](a4|letter))?\\.[a-z]+$`,
    'i',
  );
  return files.filter((file) => own.test(file.path)).sort(inOrder);
}

/** The sheets and the figures of a finishing chart, prints first. */
export function filesOfFinishing(id: string, files: readonly BuiltFile[]): BuiltFile[] {
  const own = new RegExp(`^(print|data)/finishing/${id}([-.](a4|letter))?\\.[a-z]+$`, 'i');
  return files.filter((file) => own.test(file.path)).sort(inOrder);
}

/** Portions and cutting guides, prints first. */
export function filesOfPortions(files: readonly BuiltFile[]): BuiltFile[] {
  return files
    .filter(({ path }) => /^(print\/cutting-guides|data\/portions)\/[a-z-]+\.[a-z]+$/.test(path))
    .sort(inOrder);
}

/** The sheets about one recipe in the oven. */
export function filesOfGuide(recipeId: string, files: readonly BuiltFile[]): BuiltFile[] {
  const own = new RegExp(`^print/bake-guides/${recipeId}([-.](a4|letter))?\\.[a-z]+$`, 'i');
  return files.filter((file) => own.test(file.path)).sort(inOrder);
}

/** The figures of one label. */
export function filesOfLabel(id: string, files: readonly BuiltFile[]): BuiltFile[] {
  const own = new RegExp(`^data/labels/${id}\\.[a-z]+$`, 'i');
  return files.filter((file) => own.test(file.path)).sort(inOrder);
}

/** Sheets of labels and allergen cards. */
export function filesOfLabelSheets(files: readonly BuiltFile[]): BuiltFile[] {
  return files.filter(({ path }) => /^print\/labels\/(full|allergen-cards)-[^/]*$/.test(path)).sort(inOrder);
}

/** Kinds of files that an order or a week has, as they stand in file names; '' for its figures and its calendar. */
export const ORDER_FILES = [
  ...(['order-sheet', 'stack-sheet', 'support-template', 'week-sheet', 'day-sheet', 'oven-plan'] as const),
  ...(['shopping-list', 'quote'] as const),
  ...(['full', 'allergen-cards', 'timetable', ''] as const),
] as const;
export type OrderFileKind = (typeof ORDER_FILES)[number];

/** The files of an order or a week, kind by kind; kinds without a file are left out. */
export function filesOfOrder(
  id: string,
  files: readonly BuiltFile[],
): { kind: OrderFileKind; files: BuiltFile[] }[] {
  return ORDER_FILES.flatMap((kind) => {
    const named = kind === '' ? '' : `-${kind}`;
    const size = kind === 'full' || kind === 'allergen-cards' ? '[^/]*' : '([-.](a4|letter))?';
    const own = new RegExp(`^(print|data)/(labels/)?(orders|weeks)/${id}${named}${size}\\.[a-z]+$`, 'i');
    const found = files.filter(({ path }) => own.test(path)).sort(inOrder);
    return found.length === 0 ? [] : [{ kind, files: found }];
  });
}

function chartGroup(charts: readonly Named[], files: readonly BuiltFile[]): DownloadGroup {
  return {
    title: 'Tin charts',
    about: 'For the kitchen wall, in each paper, and the same figures for a spreadsheet.',
    entries: charts
      .map((chart) => ({ title: chart.name, files: filesOfChart(chart.id, files).map(downloadLink) }))
      .filter((entry) => entry.files.length > 0),
  };
}

const FOLDERS: Readonly<Record<string, string>> = {
  'tin-charts': 'Tin charts',
  'egg-ladders': 'Egg ladders',
  finishing: 'Fillings and coatings',
  'bake-guides': 'Baking times',
  'recipe-cards': 'Recipe cards',
  booklet: 'Booklet',
  wall: 'Wall references',
  orders: 'Orders',
  weeks: 'Orders',
  labels: 'Labels',
  'cutting-guides': 'Portions and cutting guides',
  portions: 'Portions and cutting guides',
  templates: 'Lining templates and cutting guides',
};

/** 'print/in-ID/wall/…' is a print in another of the house's styles. */
function folderTitle(path: string): string {
  const parts = folderOf(path).split('/').slice(1);
  const style = parts[0]?.startsWith('in-') ? parts.shift()?.slice('in-'.length) : undefined;
  const [kind = '', ...named] = parts;
  const title = [FOLDERS[kind] ?? kind, ...named].join(', ');
  return style === undefined ? title : `${title}, in the style ‘${style}’`;
}

/** The name without paper and extension: one entry for all the files that say the same. */
const entryName = (path: string): string =>
  bookletEntryName(path) ??
  cardEntryName(path) ??
  baseName(path)
    .replace(PAPER_PART, '')
    .replace(/\.[a-z]+$/i, '');

function aboutOf(files: readonly BuiltFile[]): string {
  if (files.some(({ path }) => isBookletFile(path))) return BOOKLET_FILE_WORDS.about;
  if (files.some(({ path }) => cardEntryName(path) !== null)) return CARD_FILE_WORDS.about;
  return 'PDF at its true size.';
}

/** Recipes and charts by the names that people know them by. */
type Names = ReadonlyMap<string, string>;

function folderGroup(title: string, files: readonly BuiltFile[], known: Names): DownloadGroup {
  const names = [...new Set(files.map((file) => entryName(file.path)))].sort();
  return {
    title,
    about: aboutOf(files),
    entries: names.map((name) => ({
      title: known.get(name) ?? name.replaceAll('--', ', ').replaceAll('-', ' '),
      files: files
        .filter((file) => entryName(file.path) === name)
        .sort(inOrder)
        .map(downloadLink),
    })),
  };
}

/** All files of a build: those of each chart together, the rest by what they are. */
export function downloadsView(charts: readonly Named[], files: readonly BuiltFile[]): DownloadsView {
  const ofCharts = new Set(charts.flatMap((chart) => filesOfChart(chart.id, files)));
  const rest = files.filter((file) => !ofCharts.has(file));
  const titles = [...new Set(rest.map((file) => folderTitle(file.path)))].sort();
  const known = new Map(charts.map(({ id, name }) => [id, name]));
  const others = titles.map((title) =>
    folderGroup(
      title,
      rest.filter((file) => folderTitle(file.path) === title),
      known,
    ),
  );
  return {
    head: pageHead({
      path: 'downloads.html',
      text: 'To print and keep',
      description: 'Everything that can be printed or opened in a spreadsheet.',
      section: 'downloads',
    }),
    groups: [chartGroup(charts, files), ...others].filter((group) => group.entries.length > 0),
  };
}
