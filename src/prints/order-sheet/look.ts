/** Looks of one sheet: with air where there is room, tight where an order would run over its spread. */
import { type TypeStyle, typeScale } from '../sheet/type-scale.ts';

export interface SheetLook {
  /** What one bakes from, read from the worktop: 14 pt. */
  strong: TypeStyle;
  name: TypeStyle;
  body: TypeStyle;
  /** Papers to take along: listed with boxes, or in a few lines with the names of their files or without. */
  papers: 'listed' | 'with-files' | 'by-name';
  /** Beside what one has to know. */
  detail: TypeStyle;
  title: TypeStyle;
  section: TypeStyle;
  paddingMm: number;
  gapMm: number;
  /** Above the header of a table. */
  tableGapMm: number;
  /** A line to write on. */
  writeMm: number;
}

const STRONG: TypeStyle = { ...typeScale.key, sizePt: 14, leadingPt: 17 };

const TIGHTEST: SheetLook = {
  strong: { ...STRONG, leadingPt: 13.8 },
  name: { ...typeScale.ingredient, sizePt: 9, leadingPt: 10.6 },
  body: { ...typeScale.body, sizePt: 8.25, leadingPt: 10.2 },
  detail: { ...typeScale.rowDetail, sizePt: 8, leadingPt: 9.4 },
  title: { ...typeScale.title, sizePt: 16, leadingPt: 18 },
  section: { ...typeScale.section, sizePt: 11.5, leadingPt: 13 },
  paddingMm: 0,
  gapMm: 1.2,
  tableGapMm: 1.4,
  papers: 'listed',
  writeMm: 7,
};

export const LOOKS: readonly [SheetLook, ...SheetLook[]] = [
  {
    strong: STRONG,
    name: { ...typeScale.ingredient, sizePt: 11.5, leadingPt: 15 },
    body: typeScale.body,
    detail: typeScale.rowDetail,
    title: { ...typeScale.title, sizePt: 24, leadingPt: 27 },
    section: typeScale.section,
    paddingMm: 1,
    gapMm: 5,
    tableGapMm: 4,
    papers: 'listed',
    writeMm: 8.5,
  },
  {
    strong: { ...STRONG, leadingPt: 15.5 },
    name: { ...typeScale.ingredient, sizePt: 11, leadingPt: 13.5 },
    body: { ...typeScale.body, sizePt: 9.5, leadingPt: 12.5 },
    detail: { ...typeScale.rowDetail, sizePt: 8.5, leadingPt: 10.5 },
    title: { ...typeScale.title, sizePt: 20, leadingPt: 23 },
    section: { ...typeScale.section, sizePt: 13.5, leadingPt: 16 },
    paddingMm: 0.35,
    gapMm: 2.8,
    tableGapMm: 3,
    papers: 'listed',
    writeMm: 8.5,
  },
  {
    strong: { ...STRONG, leadingPt: 14.5 },
    name: { ...typeScale.ingredient, sizePt: 10, leadingPt: 12 },
    body: { ...typeScale.body, sizePt: 8.5, leadingPt: 10.8 },
    detail: { ...typeScale.rowDetail, sizePt: 8, leadingPt: 9.6 },
    title: { ...typeScale.title, sizePt: 17, leadingPt: 19.5 },
    section: { ...typeScale.section, sizePt: 12, leadingPt: 14 },
    paddingMm: 0.1,
    gapMm: 1.8,
    tableGapMm: 2,
    papers: 'listed',
    writeMm: 7,
  },
  TIGHTEST,
  { ...TIGHTEST, papers: 'with-files' },
  { ...TIGHTEST, papers: 'by-name' },
];
