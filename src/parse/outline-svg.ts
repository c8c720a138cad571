/**
 * A drawn tin: SVG text → outline in mm, y up, centred on its bounding box, filled by even-odd across all its
 * shapes (a shape inside a shape is a hole). Open paths are closed. Drawings with a document type, scripts,
 * links, style sheets, text or pictures are refused; so are outlines that cross themselves.
 */
import type { Outline } from '../domain/outline.ts';
import type { Result } from '../domain/result.ts';
import { fail } from '../domain/result.ts';
import { checkedOutline } from './outline-check.ts';
import { pathData } from './outline-drawn-shapes.ts';
import { type DrawnElement, readDrawing } from './outline-elements.ts';
import { errorAt } from './outline-place.ts';
import { drawnRings } from './outline-rings.ts';
import { drawingScale, type Scale } from './outline-scale.ts';

export interface OutlineOptions {
  /** Every tin that uses the drawing says how large it is: a drawing without units is then accepted, at 200 mm. */
  sizeFromTin?: boolean;
}

const LONGEST_TEXT = 200_000;
const MOST_SHAPES = 500;

function ringsOfShape(element: DrawnElement, scale: Scale) {
  const data = pathData(element);
  return data.ok ? drawnRings(data.value, element, scale) : data;
}

function sizeMissing(root: DrawnElement) {
  const hint =
    'Give the svg element width="80mm" height="120mm" (mm, cm or in), or the tin that uses it across: 8in.';
  return errorAt(root.place, 'outline-size-missing', 'The drawing does not say how large it is', hint);
}

/** The outline of an SVG drawing, or every problem found in it, with line and column. */
export function parseOutlineSvg(text: string, file: string, options: OutlineOptions = {}): Result<Outline> {
  const start = { file, line: 1, column: 1 };
  if (text.length > LONGEST_TEXT) {
    const message = `The drawing has ${text.length} characters; at most ${LONGEST_TEXT} are read`;
    return fail(errorAt(start, 'outline-too-detailed', message, 'Leave pictures out and simplify the path.'));
  }
  const { root, shapes, problems } = readDrawing(text, file);
  if (root === null || problems.length > 0) return fail(...problems);
  if (shapes.length > MOST_SHAPES) {
    const message = `The drawing has ${shapes.length} shapes; at most ${MOST_SHAPES} are read`;
    return fail(errorAt(root.place, 'outline-too-detailed', message, 'Unite them into one path.'));
  }
  const scale = drawingScale(root);
  if (!scale.ok) return scale;
  const sized = scale.value !== null;
  if (!sized && options.sizeFromTin !== true) return fail(sizeMissing(root));
  const results = shapes.map((element) => ringsOfShape(element, scale.value ?? { x: 1, y: 1 }));
  const wrong = results.flatMap((result) => (result.ok ? [] : result.problems));
  if (wrong.length > 0) return fail(...wrong);
  const rings = results.flatMap((result) => (result.ok ? result.value : []));
  return checkedOutline(rings, shapes[0]?.place ?? root.place, sized);
}
