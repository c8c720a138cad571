import { describe, expect, it } from 'vitest';
import { type LiningPiece, liningPieces } from '../../../src/compute/lining/index.ts';
import { flattenOutline } from '../../../src/compute/outline/index.ts';
import type { Outline, Point } from '../../../src/domain/outline.ts';
import type { LaidPiece } from '../../../src/prints/templates/cut-into-parts.ts';
import { pageContents, rawObjects } from '../../reading-back/raw-objects.ts';
import { printed } from '../../samples/printed.ts';
import { assembled } from './support/assembled.ts';
import { demoTemplates, type TemplateCase } from './support/demo-templates.ts';
import { boundsOf, centredLines, linesApartMm } from './support/line-distance.ts';
import { readStrokes } from './support/path-operators.ts';

const ALLOWED_MM = 0.2;
const PAPERS = { clearanceMm: 2, overlapMm: 20, collarMm: 20 };

/** Closed lines on paper: y down, and turned as the piece lies. */
function onPaper(outline: Outline, turned: boolean): Point[][] {
  const rings = flattenOutline(outline, 0.005).map((ring) => {
    const closed = [...ring, ...ring.slice(0, 1)].map(({ x, y }) => ({ x, y: -y }));
    return turned ? closed.map(({ x, y }) => ({ x: -y, y: x })) : closed;
  });
  return centredLines(rings);
}

function rectangle(widthMm: number, heightMm: number, turned: boolean): Point[][] {
  const [x, y] = turned ? [heightMm / 2, widthMm / 2] : [widthMm / 2, heightMm / 2];
  const corners = [
    [-x, -y],
    [x, -y],
    [x, y],
    [-x, y],
    [-x, -y],
  ];
  return [corners.map(([cx = 0, cy = 0]) => ({ x: cx, y: cy }))];
}

const papersOf = ({ tin }: TemplateCase) =>
  liningPieces(tin, PAPERS).filter(({ kind }) => kind !== 'trace-the-base' && kind !== 'grease-and-flour');

function expectedLines(paper: LiningPiece, turned: boolean): Point[][] {
  if (paper.kind === 'strip') return rectangle(paper.lengthMm, paper.heightMm, turned);
  if ('outline' in paper) return onPaper(paper.outline, turned);
  throw new Error(`${paper.kind} has no lines`);
}

function measured(wanted: TemplateCase, pages: string[], laid: LaidPiece) {
  const strokes = pages.slice(wanted.wordPages).map(readStrokes);
  return assembled(laid, wanted.layout, strokes);
}

describe('templates measured by the path operators of their PDFs', async () => {
  const { cases, fonts } = await demoTemplates();

  describe.each(cases)('$name', (wanted) => {
    const pages = pageContents(rawObjects(printed(wanted.print, fonts)));
    const lining = wanted.layout.pieces.filter(({ piece }) => piece.group === 'lining');

    it('lining papers are the computed ones within 0.2 mm, parts joined by their crosses', () => {
      const papers = papersOf(wanted);
      expect(lining).toHaveLength(papers.length);
      for (const [index, laid] of lining.entries()) {
        const paper = papers[index];
        if (paper === undefined) throw new Error('more pieces than papers');
        const { lines, missMm } = measured(wanted, pages, laid);
        expect(missMm).toBeLessThan(0.01);
        const apart = linesApartMm(centredLines(lines), expectedLines(paper, laid.turned));
        expect(apart, laid.piece.name).toBeLessThan(ALLOWED_MM);
      }
    });

    it('levelling strips and boards keep the size that their words give', () => {
      for (const laid of wanted.layout.pieces.filter(({ piece }) => piece.group !== 'lining')) {
        const { lines, missMm } = measured(wanted, pages, laid);
        const { minX, maxX, minY, maxY } = boundsOf(lines);
        const [said = 0, other = said] = [
          ...laid.piece.sizeText.replaceAll(',', '').matchAll(/[\d.]+(?= mm| ×)/g),
        ].map(Number);
        const [across, down] = laid.turned ? [maxY - minY, maxX - minX] : [maxX - minX, maxY - minY];
        expect(missMm).toBeLessThan(0.01);
        expect(Math.abs(across - said), laid.piece.name).toBeLessThan(ALLOWED_MM);
        expect(Math.abs(down - (laid.piece.sizeText.includes('across') ? said : other))).toBeLessThan(
          ALLOWED_MM,
        );
      }
    });

    it('parts lap by 10 to 15 mm', () => {
      for (const laid of wanted.layout.pieces.filter(({ columns, rows }) => columns * rows > 1)) {
        if (laid.columns > 1 && laid.rows > 1) continue;
        const { lines, partLines } = measured(wanted, pages, laid);
        const extent = (of: Point[][]) => {
          const { minX, maxX, minY, maxY } = boundsOf(of);
          return laid.columns > 1 ? maxX - minX : maxY - minY;
        };
        const laps = partLines.reduce((sum, part) => sum + extent(part), 0) - extent(lines);
        const lap = laps / (partLines.length - 1);
        expect(lap).toBeGreaterThanOrEqual(10);
        expect(lap).toBeLessThanOrEqual(15);
      }
    });

    it('carries a bar of 100 mm on every sheet', () => {
      for (const page of pages) {
        const bars = readStrokes(page)
          .flatMap(({ subpaths }) => subpaths)
          .filter(([a, b]) => a && b && a.y === b.y && Math.abs(b.x - a.x - 100) < 0.005);
        expect(bars).toHaveLength(1);
      }
    });
  });
});

describe('known sizes', async () => {
  const { cases, fonts } = await demoTemplates();

  function piece(name: string, id: string) {
    const wanted = cases.find((candidate) => candidate.name === name);
    const laid = wanted?.layout.pieces.find((candidate) => candidate.piece.id === id);
    if (wanted === undefined || laid === undefined) throw new Error(`no ${id} of ${name}`);
    const { lines } = measured(wanted, pageContents(rawObjects(printed(wanted.print, fonts))), laid);
    const { minX, maxX, minY, maxY } = boundsOf(lines);
    return [maxX - minX, maxY - minY].sort((a, b) => a - b).map((mm) => Math.round(mm * 10) / 10);
  }

  it('a 12 in round: base 304.8 − 4, strip π × 304.8 + 20 by 76.2 + 20', () => {
    expect(piece('round-12 on A4', 'base')).toEqual([300.8, 300.8]);
    expect(piece('round-12 on Letter', 'side')).toEqual([96.2, 977.6]);
  });

  it('a 13 × 9 in tray: base 326.2 × 224.6, strip 2 × (330.2 + 228.6) + 20 by 50.8 + 20', () => {
    expect(piece('tray-13-9 on A4', 'base')).toEqual([224.6, 326.2]);
    expect(piece('tray-13-9 on A4', 'side')).toEqual([70.8, 1137.6]);
  });

  it('a ring of 10 in: tube strip π × 76.2 + 20', () => {
    expect(piece('ring-10 on A4', 'tube')).toEqual([121.6, 259.4]);
  });
});
