/** Guides on the paper of a sloping round wall: the rim of the tin, and where its ends lap. */
import type { LiningPiece, LiningSettings } from '../compute/lining/index.ts';
import { outlinePath } from '../compute/outline/index.ts';
import type { Arc } from '../domain/outline.ts';
import type { TemplateWords } from '../wording/lining-template/index.ts';
import type { TemplateGuide } from './lining-template.types.ts';
import { guide, lineSteps } from './lining-template-steps.ts';

type Sector = Extract<LiningPiece, { kind: 'sector' }>;

/** Outer and inner arc share their centre, which is not the piece's own middle. */
function arcsOf({ outline }: Sector): Arc[] {
  return outline.rings.flatMap(({ segments }) =>
    segments.flatMap((segment) => (segment.kind === 'arc' ? [segment] : [])),
  );
}

function arcAt(arc: Arc, radiusMm: number): TemplateGuide['steps'] {
  const at = (angle: number) => ({
    x: arc.centre.x + radiusMm * Math.cos(angle),
    y: arc.centre.y + radiusMm * Math.sin(angle),
  });
  const end = arc.startAngle + arc.sweep;
  const ring = {
    start: at(arc.startAngle),
    segments: [{ ...arc, rx: radiusMm, ry: radiusMm, to: at(end) }],
  };
  // An open line: the straight stroke that would close the ring is left off.
  return outlinePath({ rings: [ring] }).filter((step) => step.op === 'move' || step.op === 'cubic');
}

/** A wall that opens upwards has its rim below a collar; one that narrows has neither. */
export function sectorGuides(
  piece: Sector,
  opensUpwards: boolean,
  { overlapMm, collarMm }: LiningSettings,
  words: TemplateWords,
): TemplateGuide[] {
  const outer = arcsOf(piece).find((arc) => arc.rx > piece.innerRadiusMm + 1e-3);
  if (outer === undefined) return [];
  const rimMm = opensUpwards ? piece.outerRadiusMm - collarMm : piece.innerRadiusMm;
  const lap = outer.startAngle + overlapMm / rimMm;
  const { centre } = outer;
  const cos = Math.cos(lap);
  const sin = Math.sin(lap);
  const from = { x: centre.x + piece.innerRadiusMm * cos, y: centre.y + piece.innerRadiusMm * sin };
  const to = { x: centre.x + piece.outerRadiusMm * cos, y: centre.y + piece.outerRadiusMm * sin };
  const lapGuide = guide('lap', words.guides.lap, lineSteps(from.x, -from.y, to.x, -to.y));
  const footMm = opensUpwards ? piece.innerRadiusMm : piece.outerRadiusMm;
  const foot = guide('foot', words.guides.foot, arcAt(outer, footMm), false);
  if (!opensUpwards) return [foot, lapGuide];
  return [guide('rim', words.guides.rim, arcAt(outer, rimMm)), foot, lapGuide];
}
