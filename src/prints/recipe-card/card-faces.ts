/** The faces of a recipe's cards, front and back in turn: weights first, then the method, flowing to further cards. */
import { heading } from '../sheet/blocks.ts';
import { flow } from '../sheet/flow.ts';
import { hairline } from '../sheet/rules.ts';
import { codeBlock } from './card-code.ts';
import { drawFurniture } from './card-furniture.ts';
import { cardMethod, withFewestCards } from './card-method.ts';
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

const NOTE_LINE_MM = 8;

/** Paper to write on where the last card would have an empty back. */
function notesFace({ view, words, form, context }: CardParts): FaceContent {
  const { widthMm, heightMm } = frameOf(form);
  const title = heading(words.notes, { level: 2, type: form.type.heading })(widthMm, context);
  return {
    fromTop: false,
    draw(surface, xMm, yMm) {
      for (const strip of title)
        surface.within('Sect', { key: `${view.id} notes` }, () => strip.draw(surface, xMm, yMm));
      surface.artifact(() => {
        for (let y = 2 * NOTE_LINE_MM; y < heightMm; y += NOTE_LINE_MM)
          hairline(surface, context, xMm, yMm + y, widthMm);
      });
    },
  };
}

/** The method begins on the back of a front that holds all weights, else straight after them. */
function uprightContents(parts: CardParts): FaceContent[] {
  const { form, view, context } = parts;
  const { blocks, fits, after } = uprightFront(parts);
  return withFewestCards(parts, (methodParts) => {
    const sections = [
      { key: `${view.id} front`, blocks },
      { key: `${view.id} method`, blocks: cardMethod(methodParts, [], after), startsPage: fits },
    ];
    return flow(sections, frameOf(form), context).map((page) => ({
      fromTop: false,
      draw: (...at) => page.draw(...at),
    }));
  });
}

type Columns = ReturnType<typeof flow>;

/** Two columns a face. */
function columnFaces(columns: Columns, stepMm: number): FaceContent[] {
  const pairs = Array.from({ length: Math.ceil(columns.length / 2) }, (_, face) =>
    columns.slice(2 * face, 2 * face + 2),
  );
  return pairs.map((pair) => ({
    fromTop: false,
    draw(surface, xMm, yMm) {
      for (const [index, column] of pair.entries()) column.draw(surface, xMm + index * stepMm, yMm);
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
    return [...faces, ...columnFaces(columns, widthMm + COLUMN_GAP_MM)];
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
