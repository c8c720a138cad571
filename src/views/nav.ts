/**
 * Where a page lives and what stands around it: its flat address, the way back to the root, its title, the
 * crumbs above it. All links on a page are relative, so that the site opens from disk and below any path.
 */
import type { SectionName } from '../wording/site/index.ts';

export type Section = SectionName | 'pages';

export interface PageLink {
  /** From the site's root: 'tins/round-6.html'. */
  path: string;
  text: string;
}

/** A section is called what the locale calls it. */
export interface SectionLink {
  section: SectionName;
  path: string;
}

export interface PageHead {
  path: string;
  /** '' at the root, '../' one folder down: what every link on the page starts with. */
  root: string;
  title: string;
  description: string;
  section: Section;
  crumbs: (PageLink | SectionLink)[];
  /** Whether a table on the page can be sorted, and so needs its script. */
  sorts: boolean;
  /** Style sheets and scripts of this page alone, by their addresses from the root's style/ and from the root. */
  sheets: readonly string[];
  scripts: readonly string[];
  /** Its picture below pictures/, without '.png'; the house's own when it has none. */
  picture: string;
  /** When the page's charts fall into one block per tin: a media query, '' for a page without charts. */
  blocks: string;
}

/** The sections in the order of a baker's day. */
export const SECTION_LINKS: readonly SectionLink[] = [
  { section: 'planner', path: 'planner.html' },
  { section: 'charts', path: 'charts.html' },
  { section: 'recipes', path: 'recipes.html' },
  { section: 'flavours', path: 'flavours.html' },
  { section: 'finishing', path: 'finishing.html' },
  { section: 'bakes', path: 'bakes.html' },
  { section: 'tins', path: 'tins.html' },
  { section: 'labels', path: 'labels.html' },
  { section: 'orders', path: 'orders.html' },
  { section: 'downloads', path: 'downloads.html' },
  { section: 'find', path: 'find.html' },
];

const HOME: SectionLink = { section: 'home', path: 'index.html' };

/** The way from a page back to the site's root: rootFrom('tins/round-6.html') is '../'. */
function rootFrom(path: string): string {
  return '../'.repeat(path.split('/').length - 1);
}

/** The head of a page at `path`; a page below a section carries that section in its crumbs. */
export function pageHead(
  page: PageLink &
    Pick<PageHead, 'description' | 'section'> &
    Partial<Pick<PageHead, 'sorts' | 'blocks' | 'sheets' | 'scripts' | 'picture'>> & { below?: PageLink[] },
): PageHead {
  const {
    path,
    text: title,
    description,
    section,
    sorts = false,
    blocks = '',
    sheets = [],
    scripts = [],
    picture = 'house',
  } = page;
  const index = SECTION_LINKS.find((link) => link.section === section);
  const between = index && index.path !== path ? [index] : [];
  const crumbs = path === HOME.path ? [] : [HOME, ...between, ...(page.below ?? [])];
  return {
    path,
    root: rootFrom(path),
    title,
    description,
    section,
    crumbs,
    sorts,
    blocks,
    sheets,
    scripts,
    picture,
  };
}

export const tinPath = (tinId: string): string => `tins/${tinId}.html`;
export const recipePath = (recipeId: string): string => `recipes/${recipeId}.html`;
export const chartPath = (chartId: string): string => `charts/${chartId}.html`;
export const workingPath = (chartId: string): string => `working/${chartId}.html`;
export const flavourPath = (flavourId: string): string => `flavours/${flavourId}.html`;
export const finishPath = (finishId: string): string => `finishing/${finishId}.html`;
export const labelPath = (labelId: string): string => `labels/${labelId}.html`;
export const bakePath = (recipeId: string): string => `bakes/${recipeId}.html`;
export const freePagePath = (pageId: string): string => `pages/${pageId}.html`;
export const orderPath = (orderId: string): string => `orders/${orderId}.html`;
export const weekPath = (weekId: string): string => `orders/week-${weekId.toLowerCase()}.html`;
