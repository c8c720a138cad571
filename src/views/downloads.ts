/** What can be printed or opened in a spreadsheet, grouped by what it is for. */
import { formatNumber } from '../wording/number.ts';
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
export const downloadPath = (builtPath: string): string => `files/${builtPath}`;

/** Bytes as people say them: 48300 is '48 kB', 1250000 is '1.3 MB'. */
export function formatBytes(byteCount: number): string {
  if (byteCount >= 1_000_000) return `${formatNumber(byteCount / 1_000_000, 1)} MB`;
  return `${formatNumber(Math.max(1, byteCount / 1000), 0)} kB`;
}

const baseName = (path: string): string => path.slice(path.lastIndexOf('/') + 1);
const folderOf = (path: string): string => path.slice(0, Math.max(0, path.lastIndexOf('/')));
const extensionOf = (path: string): string => baseName(path).split('.').pop() ?? '';

const isLadder = (path: string): boolean => path.includes('/egg-ladders/');

const PAPERS: readonly [RegExp, string][] = [
  [/(^|[-./])a4([-./]|$)/i, 'A4'],
  [/(^|[-./])letter([-./]|$)/i, 'US Letter'],
];

function linkText(path: string): string {
  const kind = extensionOf(path).toUpperCase();
  const paper = PAPERS.find(([pattern]) => pattern.test(path))?.[1];
  const what = isLadder(path) ? `Egg ladder ${kind}` : kind;
  return paper ? `${what}, ${paper}` : what;
}

/** The link to one built file. */
export function downloadLink(file: BuiltFile): DownloadLink {
  return { path: downloadPath(file.path), text: linkText(file.path), sizeText: formatBytes(file.byteCount) };
}

/** Prints first, then data; within each by path. */
function inOrder(a: BuiltFile, b: BuiltFile): number {
  const rank = ({ path }: BuiltFile): number =>
    ['pdf', 'csv', 'json'].indexOf(extensionOf(path)) + (isLadder(path) ? 3 : 0);
  return rank(a) - rank(b) || (a.path < b.path ? -1 : 1);
}

/** The files whose name is a thing's id, with or without a paper's name after it. */
export function filesOf(id: string, files: readonly BuiltFile[], ids: readonly string[]): BuiltFile[] {
  const longer = ids.filter((other) => other !== id && other.startsWith(id));
  const names = (path: string, wanted: string): boolean =>
    new RegExp(`^${wanted}([-.](a4|letter))?\\.[a-z]+$`, 'i').test(baseName(path)) ||
    folderOf(path).split('/').includes(wanted);
  return files
    .filter((file) => names(file.path, id) && !longer.some((other) => names(file.path, other)))
    .sort(inOrder);
}

function chartGroup(charts: readonly Named[], files: readonly BuiltFile[]): DownloadGroup {
  const ids = charts.map((chart) => chart.id);
  return {
    title: 'Tin charts',
    about: 'One sheet for the wall of the kitchen, in both papers, and the same numbers as a table.',
    entries: charts
      .map((chart) => ({ title: chart.name, files: filesOf(chart.id, files, ids).map(downloadLink) }))
      .filter((entry) => entry.files.length > 0),
  };
}

function otherGroup(files: readonly BuiltFile[]): DownloadGroup {
  return {
    title: 'Everything else',
    about: 'By the name of the file.',
    entries: [...files]
      .sort(inOrder)
      .map((file) => ({ title: baseName(file.path), files: [downloadLink(file)] })),
  };
}

/** All files of a build: those of each chart together, the rest by name. */
export function downloadsView(charts: readonly Named[], files: readonly BuiltFile[]): DownloadsView {
  const ids = charts.map((chart) => chart.id);
  const ofCharts = new Set(charts.flatMap((chart) => filesOf(chart.id, files, ids)));
  const rest = files.filter((file) => !ofCharts.has(file));
  return {
    head: pageHead({
      path: 'downloads.html',
      text: 'To print and keep',
      description: 'Every chart as PDF, CSV and JSON.',
      section: 'downloads',
    }),
    groups: [chartGroup(charts, files), otherGroup(rest)].filter((group) => group.entries.length > 0),
  };
}
