/**
 * The whole booklet, bound: the body is set once and its places recorded, so that contents and index can name
 * pages; notes pages then fill the last sheet.
 */
import type { Locale } from '../../domain/kitchen.ts';
import type { BookletView } from '../../views/booklet/booklet.types.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { heading } from '../sheet/blocks.ts';
import { type FlowedPage, flow, type Section } from '../sheet/flow.ts';
import { setBefore } from '../sheet/set-before.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import { shiftedSurface } from '../sheet/shifted-surface.ts';
import type { PrintPage, Surface } from '../sheet/surface.ts';
import { drawBackCover } from './back-cover.ts';
import { type BookletForm, bodyFrame, leftEdgeMm, type PageFrame } from './booklet-form.ts';
import { bookletType } from './booklet-type.ts';
import { contentsEntries, contentsPages } from './contents.ts';
import { drawCover } from './cover.ts';
import { finishingSections } from './finishing-section.ts';
import { flavourSections } from './flavour-section.ts';
import { drawFurniture } from './furniture.ts';
import { drawImprint } from './imprint.ts';
import { indexPages } from './index-pages.ts';
import { overviewSection, useSection } from './opening-sections.ts';
import { recipeSection, type SectionParts } from './recipe-section.ts';
import { type PageRecord, recorded } from './recording-surface.ts';
import { tablesSections } from './reference-section.ts';
import { drawRuledLines, LINE_MM } from './ruled-lines.ts';

export interface BookletParts {
  view: BookletView;
  form: BookletForm;
  words: BookletWords;
  lang: Locale;
  context: SheetContext;
}

/** A page before it has its number. */
interface UnboundPage {
  /** Said at the head; null for a page without head and number. */
  running: string | null;
  draw(surface: Surface, xMm: number): void;
}

/** A run of sections, and what their pages say at the head. */
interface Part {
  running: string;
  /** All that the sections are set from but what every part is set from. */
  told: unknown;
  sections(parts: SectionParts): Section[];
}

const partFrom = <Told>(
  running: string,
  told: Told,
  sections: (told: Told, parts: SectionParts) => Section[],
): Part => ({ running, told, sections: (parts) => sections(told, parts) });

function partsOf({ view, words }: BookletParts): Part[] {
  const { tins, reference } = view;
  return [
    partFrom(words.use.heading, view.use, (use, parts) => [useSection(use, parts)]),
    partFrom(view.overview.title, view.overview, (overview, parts) => [overviewSection(overview, parts)]),
    ...view.recipes.map((one) => partFrom(one.name, one, (recipe, parts) => [recipeSection(recipe, parts)])),
    partFrom(words.flavours.heading, view.flavours, (flavours, parts) =>
      flavourSections(flavours, parts.words),
    ),
    partFrom(words.finishing.heading, view.finishing, finishingSections),
    partFrom(words.tables.heading, { tins, reference }, (tables, parts) =>
      tablesSections(tables.tins, tables.reference, parts),
    ),
  ];
}

/** From so much room on, the foot of a page has lines to write on. */
const ROOM_FOR_NOTES_MM = 40;

interface BodyPage extends UnboundPage {
  record: PageRecord;
}

function drawRoom(
  surface: Surface,
  parts: Pick<BookletParts, 'words' | 'context'>,
  frame: PageFrame,
  lowestMm: number,
  xMm: number,
): void {
  const topMm = lowestMm + 9;
  const { font, sizePt, colour } = bookletType.furniture;
  surface.artifact(() =>
    surface.text({
      text: parts.words.notes,
      xMm,
      yMm: topMm,
      font,
      sizePt,
      colour: parts.context.inks[colour],
    }),
  );
  const bottomMm = frame.yMm + frame.heightMm;
  const lines = Math.floor((bottomMm - topMm) / LINE_MM);
  const heightMm = lines * LINE_MM;
  drawRuledLines(surface, parts.context, { xMm, yMm: bottomMm - heightMm, widthMm: frame.widthMm, heightMm });
}

/** More parts than a kitchen of thirty recipes has on two papers. */
const MOST_PARTS = 80;
const pagesBefore = setBefore<BodyPage[]>(MOST_PARTS);

/** The pages of one part; it begins a page of its own. Set once, while nothing that it tells has changed. */
function partPages(part: Part, { view, words, lang, context }: BookletParts, frame: PageFrame): BodyPage[] {
  const { siteUrl, mass } = view;
  return pagesBefore([part.running, part.told, { siteUrl, mass, lang, frame }], context, () =>
    freshPages(part, { siteUrl, mass, words, lang, context }, frame),
  );
}

type Common = Omit<SectionParts, 'widthMm' | 'heightMm'>;

function freshPages({ running, sections }: Part, parts: Common, frame: PageFrame): BodyPage[] {
  const { widthMm, heightMm } = frame;
  const pages = flow(sections({ ...parts, widthMm, heightMm }), frame, parts.context);
  return pages.map((page) => {
    const record = recorded((surface) => page.draw(surface, 0, frame.yMm));
    const spare = frame.yMm + frame.heightMm - record.lowestMm;
    return {
      running,
      record,
      draw(surface, xMm) {
        page.draw(surface, xMm, frame.yMm);
        if (spare >= ROOM_FOR_NOTES_MM) drawRoom(surface, parts, frame, record.lowestMm, xMm);
      },
    };
  });
}

const flowed =
  (running: string, frame: PageFrame) =>
  (page: FlowedPage): UnboundPage => ({
    running,
    draw: (surface, xMm) => page.draw(surface, xMm, frame.yMm),
  });

/** The first carries the heading that the contents lead to. */
function notesPages(count: number, { words, context }: BookletParts, frame: PageFrame): UnboundPage[] {
  const title = heading(words.notes, {
    level: 1,
    type: bookletType.part,
    bookmark: words.notes,
    anchor: 'notes',
  });
  return Array.from({ length: count }, (_, index) => ({
    running: words.notes,
    draw(surface, xMm) {
      const strips = index === 0 ? title(frame.widthMm, context) : [];
      surface.within('Sect', { key: 'notes' }, () => {
        for (const strip of strips) strip.draw(surface, xMm, frame.yMm);
      });
      const used = strips.reduce((sum, { heightMm }) => sum + heightMm, 0);
      const box = { xMm, yMm: frame.yMm + used, widthMm: frame.widthMm, heightMm: frame.heightMm - used };
      drawRuledLines(surface, context, box);
    },
  }));
}

/** Cover and imprint stand before the contents, the back cover after the index. */
const BEFORE_CONTENTS = 2;
const LEAST_NOTES = 1;

function placesOf(body: readonly BodyPage[], firstPage: number): Map<string, number> {
  return new Map(
    body.flatMap(({ record }, index) =>
      record.anchors.map((anchor): [string, number] => [anchor, firstPage + index]),
    ),
  );
}

function knownPage(places: ReadonlyMap<string, number>): (anchor: string) => number {
  return (anchor) => {
    const page = places.get(anchor);
    if (page === undefined) throw new Error(`nothing in the booklet is called '${anchor}'`);
    return page;
  };
}

function bound(page: UnboundPage, number: number, { form, context }: BookletParts): PrintPage {
  return {
    ...form.page,
    draw(surface, origin) {
      const own = shiftedSurface(surface, origin);
      if (page.running !== null) drawFurniture(own, form, context, number, page.running);
      page.draw(own, leftEdgeMm(form, number));
    },
  };
}

/** All pages, a multiple of four, in reading order. */
export function boundPages(parts: BookletParts): PrintPage[] {
  const { view, words, form, context } = parts;
  const frame = bodyFrame(form);
  const body = partsOf(parts).flatMap((part) => partPages(part, parts, frame));
  const entries = contentsEntries(view, words);
  const contents = (pageOf: (anchor: string) => number) =>
    contentsPages(entries, pageOf, words.contents, frame, context).map(flowed(words.contents, frame));
  const before = BEFORE_CONTENTS + contents(() => 0).length;
  const places = placesOf(body, before + 1);
  const index = indexPages(view.index, knownPage(places), words, frame, context);
  const counted = before + body.length + index.length + 1;
  const notes = LEAST_NOTES + ((4 - ((counted + LEAST_NOTES) % 4)) % 4);
  places.set('notes', before + body.length + 1);
  places.set('index', before + body.length + notes + 1);
  const pages: UnboundPage[] = [
    { running: null, draw: (surface, xMm) => drawCover(surface, view, words, frame, context, xMm) },
    { running: null, draw: (surface, xMm) => drawImprint(surface, view, words, frame, context, xMm) },
    ...contents(knownPage(places)),
    ...body,
    ...notesPages(notes, parts, frame),
    ...index.map(flowed(words.index.heading, frame)),
    { running: null, draw: (surface, xMm) => drawBackCover(surface, view, words, frame, context, xMm) },
  ];
  return pages.map((page, at) => bound(page, at + 1, parts));
}
