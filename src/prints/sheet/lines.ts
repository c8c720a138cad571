/**
 * Text broken into lines by measured widths: greedy, no hyphenation, breaking after spaces, hyphens and dashes and
 * never at a no-break space or within a reference such as R-1042. A word wider than the line is cut between letters
 * rather than run off the sheet.
 */
import type { FontRole, Palette } from '../../domain/house-style.ts';
import { remembered } from './remembered.ts';
import type { Metrics } from './surface.ts';
import type { TypeStyle } from './type-scale.ts';

/** A stretch of text in one font; what is left out comes from the paragraph's type. */
export interface Span {
  text: string;
  font?: FontRole;
  colour?: keyof Palette;
}

export interface Paragraph {
  spans: Span[];
  type: TypeStyle;
}

export interface LinePiece {
  text: string;
  font: FontRole;
  colour: keyof Palette;
  xMm: number;
}

export interface Line {
  pieces: LinePiece[];
  /** Without the space at its end. */
  widthMm: number;
}

interface Word {
  text: string;
  widthMm: number;
  /** Width without trailing space. */
  inkMm: number;
}

type Pen = Omit<LinePiece, 'text' | 'xMm'>;

export const paragraph = (text: string, type: TypeStyle): Paragraph => ({ spans: [{ text }], type });

const wordPattern = /(?:[^ \-–—/]|(?<=\b[A-Z])-(?=\d))*(?:[ \-–—/]+|$)/g;

function measured(text: string, font: FontRole, type: TypeStyle, metrics: Metrics): Word {
  const width = (part: string) => metrics.widthMm(part, font, type.sizePt, type.tabular);
  // Spaces are measured apart: the same word then needs shaping once, wherever it stands.
  const ink = text.trimEnd();
  const inkMm = width(ink);
  return { text, widthMm: inkMm + width(text.slice(ink.length)), inkMm };
}

const wordsOf = remembered((text: string, font: FontRole, type: TypeStyle, metrics: Metrics): Word[] =>
  (text.match(wordPattern) ?? [])
    .filter((word) => word !== '')
    .map((word) => measured(word, font, type, metrics)),
);

function cutToFit(word: Word, font: FontRole, type: TypeStyle, metrics: Metrics, widthMm: number): Word[] {
  const parts: Word[] = [];
  let part = '';
  for (const letter of Array.from(word.text)) {
    if (part !== '' && measured(part + letter, font, type, metrics).inkMm > widthMm) {
      parts.push(measured(part, font, type, metrics));
      part = '';
    }
    part += letter;
  }
  return [...parts, measured(part, font, type, metrics)];
}

/** Words that share a font and colour are drawn, and therefore measured, as one: kerning reaches across words. */
class LineSetter {
  readonly lines: Line[] = [];
  readonly #type: TypeStyle;
  readonly #metrics: Metrics;
  readonly #widthMm: number;
  #pieces: LinePiece[] = [];
  #usedMm = 0;

  constructor(type: TypeStyle, metrics: Metrics, widthMm: number) {
    this.#type = type;
    this.#metrics = metrics;
    this.#widthMm = widthMm;
  }

  /** `tailMm`: what must stay on the line with the word. */
  add(word: Word, { font, colour }: Pen, tailMm = 0): void {
    if (this.#usedMm > 0 && this.#usedMm + word.inkMm + tailMm > this.#widthMm + 1e-6) this.end();
    const last = this.#pieces.at(-1);
    if (last && last.font === font && last.colour === colour) last.text += word.text;
    else this.#pieces.push({ text: word.text, font, colour, xMm: 0 });
    this.#usedMm += word.widthMm;
  }

  end(): void {
    const pieces = this.#pieces;
    const { sizePt, tabular } = this.#type;
    let x = 0;
    for (const [index, piece] of pieces.entries()) {
      piece.xMm = x;
      const text = index < pieces.length - 1 ? piece.text : piece.text.trimEnd();
      x += this.#metrics.widthMm(text, piece.font, sizePt, tabular);
    }
    this.lines.push({ pieces, widthMm: x });
    this.#pieces = [];
    this.#usedMm = 0;
  }
}

/**
 * Ink of the following spans that belongs to a span's last word: in 'butter (' + 'MILK' + '), ' no line ends
 * between bracket and word. 0 where the span ends at a place to break.
 */
function tailOf({ spans, type }: Paragraph, at: number, metrics: Metrics): number {
  if (/[ \-–—/]$/.test(spans[at]?.text ?? ' ')) return 0;
  const next = spans[at + 1];
  const words = next === undefined ? [] : wordsOf(next.text, next.font ?? type.font, type, metrics);
  const first = words[0];
  if (first === undefined) return 0;
  return first.inkMm + (words.length === 1 ? tailOf({ spans, type }, at + 1, metrics) : 0);
}

/** The paragraph's lines for a width; at least one, possibly empty. */
export function breakLines({ spans, type }: Paragraph, widthMm: number, metrics: Metrics): Line[] {
  const setter = new LineSetter(type, metrics, widthMm);
  for (const [at, span] of spans.entries()) {
    const pen = { font: span.font ?? type.font, colour: span.colour ?? type.colour };
    const words = wordsOf(span.text, pen.font, type, metrics);
    for (const [index, word] of words.entries()) {
      const tailMm = index === words.length - 1 ? tailOf({ spans, type }, at, metrics) : 0;
      if (word.inkMm <= widthMm) setter.add(word, pen, tailMm);
      else for (const part of cutToFit(word, pen.font, type, metrics, widthMm)) setter.add(part, pen);
    }
  }
  setter.end();
  return setter.lines;
}

const narrowestText = remembered((text: string, font: FontRole, type: TypeStyle, metrics: Metrics): number =>
  wordsOf(text, font, type, metrics).reduce((most, { inkMm }) => Math.max(most, inkMm), 0),
);

/** Width of the widest unbreakable word, mm. */
export function narrowestMm(text: Paragraph, metrics: Metrics): number {
  const [only, ...more] = text.spans;
  if (only && more.length === 0)
    return narrowestText(only.text, only.font ?? text.type.font, text.type, metrics);
  return narrowestOfSpans(text, metrics);
}

const narrowestOfSpans = ({ spans, type }: Paragraph, metrics: Metrics): number =>
  spans.reduce(
    (widest, span, at) =>
      wordsOf(span.text, span.font ?? type.font, type, metrics).reduce(
        (most, word, index, { length }) =>
          Math.max(most, word.inkMm + (index === length - 1 ? tailOf({ spans, type }, at, metrics) : 0)),
        widest,
      ),
    0,
  );

const unbrokenText = remembered(
  (text: string, font: FontRole, type: TypeStyle, metrics: Metrics): number =>
    breakLines({ spans: [{ text, font }], type }, Number.POSITIVE_INFINITY, metrics)[0]?.widthMm ?? 0,
);

/** Width on one line, mm. */
export function unbrokenMm(text: Paragraph, metrics: Metrics): number {
  const [only, ...more] = text.spans;
  if (only && more.length === 0)
    return unbrokenText(only.text, only.font ?? text.type.font, text.type, metrics);
  return breakLines(text, Number.POSITIVE_INFINITY, metrics)[0]?.widthMm ?? 0;
}
