/** The faces of a recipe's cards, front and back in turn: weights first, then the method, flowing to further cards. */
import { flow } from '../sheet/flow.ts';
import { codeBlock } from './card-code.ts';
import { drawFurniture } from './card-furniture.ts';
import { cardMethod, withFewestCards } from './card-method.ts';
import { notesBelow, notesFace } from './card-notes.ts';
import {
  type CardFace,
  type CardParts,
  COLUMN_GAP_MM,
  type FaceContent,
  frameOf,
  HEAD_MM,
} from './card-parts.ts';
import { lyingFront } from './lying-front.ts';
import { uprightFront } from './upright-front.ts';

/** The method begins on the back of a front that holds all weights, else straight after them. */
function uprightContents(parts: CardParts): FaceContent[] {
  const { form, view, context } = parts;
  const { blocks, fits, before, after } = uprightFront(parts);
  const frame = frameOf(form);
  return withFewestCards(parts, (methodParts) => {
    const method = cardMethod(methodParts, before, after);
    const sections = [
      { key: `${view.id} front`, blocks },
      { key: `${view.id} method`, blocks: method, startsPage: fits },
    ];
    const pages = flow(sections, frame, context);
    return pages.map((page, index) => ({
      fromTop: false,
      draw(surface, xMm, yMm) {
        page.draw(surface, xMm, yMm);
        if (index === pages.length - 1 && index % 2 === 1)
          notesBelow(parts, page.usedMm, { xMm: 0, widthMm: frame.widthMm })(surface, xMm, yMm);
      },
    }));
  });
}

type Columns = ReturnType<typeof flow>;

/** Two columns a face; a second one that nothing came to is for notes. */
function columnFaces(parts: CardParts, columns: Columns, widthMm: number): FaceContent[] {
  const second = { xMm: widthMm + COLUMN_GAP_MM, widthMm };
  const pairs = Array.from({ length: Math.ceil(columns.length / 2) }, (_, face) =>
    columns.slice(2 * face, 2 * face + 2),
  );
  return pairs.map(([left, right]) => ({
    fromTop: false,
    draw(surface, xMm, yMm) {
      left?.draw(surface, xMm, yMm);
      if (right) right.draw(surface, xMm + second.xMm, yMm);
      else notesBelow(parts, 0, second)(surface, xMm, yMm);
    },
  }));
}

/** Lying cards have the method in two columns: short lines, read quickly at arm's length. */
function lyingContents(parts: CardParts, sideMm: number): FaceContent[] {
  const { form, view, context } = parts;
  const { faces, before, after, code } = lyingFront(parts, sideMm);
  const frame = frameOf(form);
  const widthMm = (frame.widthMm - COLUMN_GAP_MM) / 2;
  return withFewestCards(parts, (methodParts) => {
    const blocks = [...cardMethod(methodParts, before, after), ...(code ? [codeBlock(code)] : [])];
    const columns = flow([{ key: `${view.id} method`, blocks }], { ...frame, widthMm }, context);
    return [...faces, ...columnFaces(parts, columns, widthMm)];
  });
}

/** Always an even number of faces: card k has faces 2k and 2k + 1. */
export function cardFaces(parts: CardParts): CardFace[] {
  const { form } = parts;
  const set = form.sideMm === null ? uprightContents(parts) : lyingContents(parts, form.sideMm);
  const faces = set.length % 2 === 0 ? set : [...set, notesFace(parts)];
  return faces.map((content, face) => ({
    draw(surface, xMm, yMm) {
      const at = { xMm, yMm, face, cards: faces.length / 2, headless: content.fromTop };
      surface.artifact(() => drawFurniture(surface, parts, at));
      const topMm = form.marginMm + (content.fromTop ? 0 : HEAD_MM);
      content.draw(surface, xMm + form.marginMm, yMm + topMm);
    },
  }));
}
