/**
 * Text broken into lines by measured widths: greedy, no hyphenation, breaking after spaces, hyphens and dashes and
 * never at a no-break space. A word wider than the line is cut between letters rather than run off the sheet.
 */
import type { FontRole, Palette } from '../../domain/house-style.ts';
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

interface Word extends Omit<LinePiece, 'xMm'> {
  widthMm: number;
  /** Width without trailing space. */
  inkMm: number;
}

export const paragraph = (text: string, type: TypeStyle): Paragraph => ({ spans: [{ text }], type });

const wordPattern = /[^ \-–—/]*(?:[ \-–—/]+|$)/g;

function measured(text: string, span: Span, type: TypeStyle, metrics: Metrics): Word {
  const font = span.font ?? type.font;
  const colour = span.colour ?? type.colour;
  const width = (part: string) => metrics.widthMm(part, font, type.sizePt, type.tabular);
  // Spaces are measured apart: the same word then needs shaping once, wherever it stands.
  const ink = text.trimEnd();
  const inkMm = width(ink);
  return { text, font, colour, widthMm: inkMm + width(text.slice(ink.length)), inkMm };
}

function cutToFit(word: Word, span: Span, type: TypeStyle, metrics: Metrics, widthMm: number): Word[] {
  if (word.inkMm <= widthMm) return [word];
  const parts: Word[] = [];
  let part = '';
  for (const letter of Array.from(word.text)) {
    if (part !== '' && measured(part + letter, span, type, metrics).inkMm > widthMm) {
      parts.push(measured(part, span, type, metrics));
      part = '';
    }
    part += letter;
  }
  return [...parts, measured(part, span, type, metrics)];
}

function wordsOf({ spans, type }: Paragraph, metrics: Metrics, widthMm: number): Word[] {
  return spans.flatMap((span) =>
    (span.text.match(wordPattern) ?? [])
      .filter((text) => text !== '')
      .flatMap((text) => cutToFit(measured(text, span, type, metrics), span, type, metrics, widthMm)),
  );
}

/** Words that share a font and colour are drawn, and therefore measured, as one: kerning reaches across words. */
function lineOf(words: Word[], type: TypeStyle, metrics: Metrics): Line {
  const pieces: LinePiece[] = [];
  for (const { text, font, colour } of words) {
    const last = pieces.at(-1);
    if (last && last.font === font && last.colour === colour) last.text += text;
    else pieces.push({ text, font, colour, xMm: 0 });
  }
  const width = (text: string, font: FontRole) => metrics.widthMm(text, font, type.sizePt, type.tabular);
  let x = 0;
  for (const [index, piece] of pieces.entries()) {
    piece.xMm = x;
    x += width(index < pieces.length - 1 ? piece.text : piece.text.trimEnd(), piece.font);
  }
  return { pieces, widthMm: x };
}

/** The paragraph's lines for a width; at least one, possibly empty. */
export function breakLines(text: Paragraph, widthMm: number, metrics: Metrics): Line[] {
  const lines: Word[][] = [[]];
  let used = 0;
  for (const word of wordsOf(text, metrics, widthMm)) {
    if (used > 0 && used + word.inkMm > widthMm + 1e-6) {
      lines.push([]);
      used = 0;
    }
    lines.at(-1)?.push(word);
    used += word.widthMm;
  }
  return lines.map((words) => lineOf(words, text.type, metrics));
}

/** Width of the widest unbreakable word, mm. */
export const narrowestMm = (text: Paragraph, metrics: Metrics): number =>
  wordsOf(text, metrics, Number.POSITIVE_INFINITY).reduce((widest, word) => Math.max(widest, word.inkMm), 0);

/** Width on one line, mm. */
export const unbrokenMm = (text: Paragraph, metrics: Metrics): number =>
  breakLines(text, Number.POSITIVE_INFINITY, metrics)[0]?.widthMm ?? 0;
