/** The method's Markdown, as written, in pieces to set. Links keep their words; anything else is plain text. */
import MarkdownIt from 'markdown-it';
import { keptUnits } from '../wording/kept-units.ts';
import type { MethodPiece, MethodSpan } from './method-text.types.ts';

const markdown = new MarkdownIt({ html: false, linkify: false, typographer: true, quotes: '‘’“”' });

type Token = ReturnType<typeof markdown.parse>[number];

function spansOf(inline: Token): MethodSpan[] {
  const spans: MethodSpan[] = [];
  let emphasis: MethodSpan['emphasis'] = 'none';
  const add = (text: string) => {
    const last = spans.at(-1);
    if (text === '') return;
    if (last?.emphasis === emphasis) last.text += text;
    else spans.push({ text, emphasis });
  };
  for (const token of inline.children ?? []) {
    if (token.type === 'strong_open') emphasis = 'strong';
    else if (token.type === 'em_open') emphasis = 'italic';
    else if (token.type === 'strong_close' || token.type === 'em_close') emphasis = 'none';
    else if (token.type === 'softbreak' || token.type === 'hardbreak') add(' ');
    else add(keptUnits(token.content));
  }
  return spans;
}

const isCaution = ([first]: MethodSpan[]): boolean =>
  first?.emphasis === 'strong' && /^(Caution|Allergens)\b/.test(first.text);

/** Lists inside lists are set one after the other. */
class Pieces {
  readonly all: MethodPiece[] = [];
  readonly #lists: { key: string; next: number | null }[] = [];
  #listCount = 0;
  #marked = false;

  open(token: Token): void {
    const start = Number(token.attrGet('start') ?? 1);
    this.#lists.push({
      key: String(this.#listCount),
      next: token.type === 'ordered_list_open' ? start : null,
    });
    this.#listCount += 1;
  }

  close(): void {
    this.#lists.pop();
  }

  item(): void {
    this.#marked = false;
  }

  text(inline: Token, opener: Token | undefined): void {
    const spans = spansOf(inline);
    const list = this.#lists.at(-1);
    if (opener?.type === 'heading_open')
      this.all.push({ kind: 'heading', text: spans.map(({ text }) => text).join('') });
    else if (!list || this.#marked) this.all.push({ kind: 'paragraph', spans, caution: isCaution(spans) });
    else {
      const number = list.next === null ? null : `${list.next}.`;
      if (list.next !== null) list.next += 1;
      this.all.push({ kind: 'item', number, list: list.key, spans });
      this.#marked = true;
    }
  }
}

/**
 * Pieces of a Markdown text in order.
 * @example methodPieces('## Mix\n\n1. Beat.') // a heading 'Mix', then an item numbered '1.'
 */
export function methodPieces(text: string): MethodPiece[] {
  const tokens = markdown.parse(text, {});
  const pieces = new Pieces();
  for (const [index, token] of tokens.entries()) {
    if (token.type === 'bullet_list_open' || token.type === 'ordered_list_open') pieces.open(token);
    else if (token.type === 'bullet_list_close' || token.type === 'ordered_list_close') pieces.close();
    else if (token.type === 'list_item_open') pieces.item();
    else if (token.type === 'inline') pieces.text(token, tokens[index - 1]);
  }
  return pieces.all;
}
