/**
 * Walks the XML of a drawing and lists the shapes in it, each with every transform above it. Nothing is
 * fetched, expanded or run: document types, scripts, links and style sheets are refused, with their place.
 */
import { SaxesParser, type SaxesTagNS } from 'saxes';
import type { Place, Problem } from '../domain/problem.ts';
import { type Paint, paintOf, UNPAINTED } from './logo-paint.ts';
import { isDrawnShape } from './outline-drawn-shapes.ts';
import { errorAt, placeFinder } from './outline-place.ts';
import { quote } from './quote.ts';

export interface DrawnElement {
  name: string;
  attributes: Map<string, string>;
  /** Transforms of the element and all around it, outermost first. */
  transform: string;
  /** Of the element and all around it. */
  paint: Paint;
  place: Place;
}

export interface Drawing {
  root: DrawnElement | null;
  shapes: DrawnElement[];
  problems: Problem[];
}

const SVG = 'http://www.w3.org/2000/svg';
const UNDRAWN = new Set(['title', 'desc', 'metadata', 'defs', 'clipPath', 'mask']);
const ACTIVE = new Set([
  'script',
  'foreignObject',
  'a',
  'image',
  'iframe',
  'set',
  'animate',
  'animateTransform',
]);
const DRAWABLE = 'Draw with path, polygon, rect, circle or ellipse, grouped with g.';
const DEEPEST = 40;
const MOST_PROBLEMS = 20;
const PIECE = 1000;

interface Level {
  transform: string;
  paint: Paint;
  skipped: boolean;
}

function attributesOf(tag: SaxesTagNS): Map<string, string> {
  return new Map(Object.values(tag.attributes).map((attribute) => [attribute.name, attribute.value]));
}

function isActive(tag: SaxesTagNS): boolean {
  const attributes = Object.values(tag.attributes);
  return ACTIVE.has(tag.local) || attributes.some(({ local }) => /^on/i.test(local) || local === 'href');
}

function isUndrawn(tag: SaxesTagNS, attributes: Map<string, string>): boolean {
  const foreign = tag.uri !== SVG && tag.uri !== '';
  return foreign || UNDRAWN.has(tag.local) || attributes.get('display') === 'none';
}

/** Sorts one opened element into the drawing and says how its children are to be taken. */
function takeElement(drawing: Drawing, tag: SaxesTagNS, outer: Level | undefined, place: Place): Level {
  const attributes = attributesOf(tag);
  const transform = `${outer?.transform ?? ''} ${attributes.get('transform') ?? ''}`.trim();
  const paint = paintOf(attributes, outer?.paint ?? UNPAINTED);
  const element = { name: tag.local, attributes, transform, paint, place };
  const refuse = (...problem: Parameters<typeof errorAt> extends [Place, ...infer Rest] ? Rest : never) => {
    drawing.problems.push(errorAt(place, ...problem));
    return { transform, paint, skipped: true };
  };
  if (isActive(tag)) {
    const message = `The drawing has scripts, links or moving parts (${quote(tag.local)})`;
    return refuse('outline-active-content', message, `An outline is lines only. ${DRAWABLE}`);
  }
  if (outer === undefined) {
    drawing.root = element;
    const known = tag.local === 'svg' && (tag.uri === SVG || tag.uri === '');
    const message = `The file starts with ${quote(tag.name)}, not with svg`;
    return known
      ? { transform, paint, skipped: false }
      : refuse('outline-xml', message, 'Save the drawing as plain SVG.');
  }
  if (isUndrawn(tag, attributes)) return { transform, paint, skipped: true };
  if (/transform|matrix|path\(/.test(attributes.get('style') ?? '')) {
    return refuse(
      'outline-transform',
      'A style moves this shape',
      'Write it as transform="…" instead of in the style.',
    );
  }
  if (isDrawnShape(tag.local)) drawing.shapes.push(element);
  else if (tag.local !== 'g') {
    return refuse('outline-element-unsupported', `An outline cannot use ${quote(tag.local)}`, DRAWABLE);
  }
  return { transform, paint, skipped: false };
}

/** Every shape of the drawing, or what is wrong with it. */
export function readDrawing(text: string, file: string): Drawing {
  const drawing: Drawing = { root: null, shapes: [], problems: [] };
  const broken: Problem[] = [];
  const levels: Level[] = [];
  const parser = new SaxesParser({ xmlns: true });
  let start = 0;
  const placeOf = placeFinder(text, file);
  const here = () => placeOf(start);
  parser.on('error', (problem) => {
    const message = `The drawing is not well-formed XML: ${problem.message.replace(/^[\d:]+\s*/, '')}`;
    const place = placeOf(Math.max(0, parser.position - 1));
    broken.push(errorAt(place, 'outline-xml', message, 'Save it again as plain SVG.'));
  });
  parser.on('doctype', () => {
    const message = 'The drawing has a document type (DOCTYPE), which may define entities';
    start = Math.max(0, text.indexOf('<!DOCTYPE'));
    broken.unshift(
      errorAt(here(), 'outline-doctype', message, 'Delete the line that starts with <!DOCTYPE.'),
    );
  });
  parser.on('processinginstruction', ({ target }) => {
    const message = `The drawing asks for something outside itself (${quote(target)})`;
    const place = placeOf(Math.max(0, text.lastIndexOf('<?', parser.position - 1)));
    drawing.problems.push(
      errorAt(place, 'outline-active-content', message, 'Delete the line that starts with <?.'),
    );
  });
  parser.on('opentagstart', () => {
    start = Math.max(0, text.lastIndexOf('<', parser.position - 1));
  });
  parser.on('opentag', (tag) => {
    const outer = levels[levels.length - 1];
    if (levels.length === DEEPEST) {
      const message = `Groups are nested more than ${DEEPEST} deep`;
      drawing.problems.push(
        errorAt(here(), 'outline-too-detailed', message, 'Ungroup the drawing and save it again.'),
      );
    }
    const skip = outer?.skipped === true || levels.length >= DEEPEST;
    levels.push(
      skip ? { transform: '', paint: UNPAINTED, skipped: true } : takeElement(drawing, tag, outer, here()),
    );
  });
  parser.on('closetag', () => {
    levels.pop();
  });
  // In pieces, so that a hostile file is dropped as soon as enough is known about it.
  const enough = () =>
    broken.length > 0 || levels.length > DEEPEST || drawing.problems.length >= MOST_PROBLEMS;
  for (let from = 0; from < text.length && !enough(); from += PIECE) {
    parser.write(text.slice(from, from + PIECE));
  }
  if (!enough()) parser.close();
  const [first] = broken;
  return first === undefined ? drawing : { root: null, shapes: [], problems: [first] };
}
