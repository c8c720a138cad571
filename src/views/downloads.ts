/** What can be printed or opened in a spreadsheet, grouped by what it is for. */
import type { DownloadFolder, DownloadPaper, DownloadWords } from '../wording/downloads/index.ts';
import { formatNumber } from '../wording/number.ts';
import { bookletEntryName, bookletLinkText, isBookletFile } from './booklet-files.ts';
import { cardEntryName, cardLinkText, isFinishCard } from './card-files.ts';
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
  /** All its PDFs together, '12.4 MB'; '' without any. */
  printsSize: string;
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

/** Keeps a group's prints on the device. */
export const KEEP_SCRIPT = 'script/keep-prints.js';

const baseName = (path: string): string => path.slice(path.lastIndexOf('/') + 1);
const folderOf = (path: string): string => path.slice(0, Math.max(0, path.lastIndexOf('/')));
const extensionOf = (path: string): string => baseName(path).split('.').pop() ?? '';

const isLadder = (path: string): boolean => path.includes('/egg-ladders/');

/** '…-a4.pdf', and '…-a2-on-a4.pdf' for a large sheet to be joined from small ones. */
const PAPER_PART = /[-.](a4|letter|a3|a2|11x17|17x22)(?:-on-(a4|letter))?(?=\.[a-z]+$)/i;

function paperText(path: string, { papers, toJoin }: DownloadWords): string | null {
  const [, sheet, home] = PAPER_PART.exec(path) ?? [];
  const name = (id: string): string => papers[id.toLowerCase() as DownloadPaper];
  if (sheet === undefined) return null;
  return home === undefined ? name(sheet) : toJoin(name(sheet), name(home));
}

function linkText(path: string, words: DownloadWords): string {
  const named = bookletLinkText(path, words) ?? cardLinkText(path, words);
  if (named !== null) return named;
  const kind = extensionOf(path).toUpperCase();
  const paper = paperText(path, words);
  const ladder = isLadder(path) ? words.eggLadder(kind) : kind;
  const what = path.startsWith('data/portions/stacks') ? words.stacks(kind) : ladder;
  return paper ? words.on(what, paper) : what;
}

/** Makes the link to one built file. */
export const downloadLinkIn =
  (words: DownloadWords) =>
  (file: BuiltFile): DownloadLink => ({
    path: downloadPath(file.path),
    text: linkText(file.path, words),
    sizeText: formatBytes(file.byteCount),
  });

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
    .filter(({ path }) => /^(print\/cutting-guides|data\/portions)\/[a-z0-9-]+\.[a-z]+$/.test(path))
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
  ...(['shopping-list', 'quote', 'costing'] as const),
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

export const isOfOrders = ({ path }: BuiltFile): boolean => /\/(orders|weeks)\//.test(path);

/** Files of orders and weeks by the id that their name begins with: a year of orders has thousands. */
export function filesByOrder(
  ids: readonly string[],
  files: readonly BuiltFile[],
): ReadonlyMap<string, readonly BuiltFile[]> {
  const byId = new Map<string, BuiltFile[]>(ids.map((id) => [id.toLowerCase(), []]));
  for (const file of files) {
    if (!isOfOrders(file)) continue;
    const name = baseName(file.path).toLowerCase();
    for (const { index } of name.matchAll(/[-.]/g)) byId.get(name.slice(0, index))?.push(file);
  }
  return byId;
}

/** What it takes to keep the prints of a group on a device. */
function printsSizeOf(files: readonly BuiltFile[]): string {
  const prints = files.filter(({ path }) => path.endsWith('.pdf'));
  return prints.length === 0 ? '' : formatBytes(prints.reduce((sum, { byteCount }) => sum + byteCount, 0));
}

function chartGroup(
  charts: readonly Named[],
  files: readonly BuiltFile[],
  words: DownloadWords,
): DownloadGroup {
  const link = downloadLinkIn(words);
  return {
    ...words.charts,
    printsSize: printsSizeOf(charts.flatMap((chart) => filesOfChart(chart.id, files))),
    entries: charts
      .map((chart) => ({ title: chart.name, files: filesOfChart(chart.id, files).map(link) }))
      .filter((entry) => entry.files.length > 0),
  };
}

/** 'print/in-ID/wall/…' is a print in another of the house's styles. */
function folderTitle(path: string, { folders, inStyle }: DownloadWords): string {
  const parts = folderOf(path).split('/').slice(1);
  const style = parts[0]?.startsWith('in-') ? parts.shift()?.slice('in-'.length) : undefined;
  const [kind = '', ...named] = parts;
  const title = [Object.hasOwn(folders, kind) ? folders[kind as DownloadFolder] : kind, ...named].join(', ');
  return style === undefined ? title : inStyle(title, style);
}

/** The name without paper and extension: one entry for all the files that say the same. */
const entryName = (path: string, words: DownloadWords): string =>
  bookletEntryName(path, words) ??
  cardEntryName(path, words) ??
  baseName(path)
    .replace(PAPER_PART, '')
    .replace(/\.[a-z]+$/i, '');

function aboutOf(files: readonly BuiltFile[], words: DownloadWords): string {
  if (files.some(({ path }) => isBookletFile(path))) return words.booklet.about;
  if (files.some(({ path }) => isFinishCard(path))) return words.cards.aboutFinishes;
  if (files.some(({ path }) => cardEntryName(path, words) !== null)) return words.cards.about;
  return words.trueSize;
}

/** Files under what they are listed by, in the order of these names. */
function groupedBy(
  files: readonly BuiltFile[],
  nameOf: (file: BuiltFile) => string,
): [string, BuiltFile[]][] {
  const groups = new Map<string, BuiltFile[]>();
  for (const file of files) {
    const name = nameOf(file);
    const group = groups.get(name);
    if (group === undefined) groups.set(name, [file]);
    else group.push(file);
  }
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1));
}

/** Recipes and charts by the names that people know them by. */
type Names = ReadonlyMap<string, string>;

function folderGroup(
  title: string,
  files: readonly BuiltFile[],
  known: Names,
  words: DownloadWords,
): DownloadGroup {
  const byName = groupedBy(files, ({ path }) => entryName(path, words));
  return {
    title,
    about: aboutOf(files, words),
    printsSize: printsSizeOf(files),
    entries: byName.map(([name, own]) => ({
      title: known.get(name) ?? words.plain(name.replaceAll('--', ', ').replaceAll('-', ' ')),
      files: own.sort(inOrder).map(downloadLinkIn(words)),
    })),
  };
}

/** All files of a build: those of each chart together, the rest by what they are. */
export function downloadsView(
  charts: readonly Named[],
  files: readonly BuiltFile[],
  words: DownloadWords,
  finishes: readonly Named[] = [],
): DownloadsView {
  const ofCharts = new Set(charts.flatMap((chart) => filesOfChart(chart.id, files)));
  const rest = files.filter((file) => !ofCharts.has(file));
  const titleOf = (file: BuiltFile): string => folderTitle(file.path, words);
  const known = new Map([...finishes, ...charts].map(({ id, name }) => [id, name]));
  const others = groupedBy(rest, titleOf).map(([title, own]) => folderGroup(title, own, known, words));
  return {
    head: pageHead({
      path: 'downloads.html',
      text: words.title,
      description: words.description,
      section: 'downloads',
      scripts: [KEEP_SCRIPT],
    }),
    groups: [chartGroup(charts, files, words), ...others].filter((group) => group.entries.length > 0),
  };
}
