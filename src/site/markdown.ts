/**
 * Methods and free pages as HTML. Markup inside the text stays text (html: false), links may not leave by a
 * script, and a paragraph that opens with a bold 'Caution' or 'Allergens' is set as a caution.
 */
import MarkdownIt from 'markdown-it';

const markdown = new MarkdownIt({ html: false, linkify: false, typographer: true, quotes: '“”‘’' });

const CAUTION = /^\*\*(Caution|Allergens)\b/;

markdown.core.ruler.push('cautions', (state) => {
  for (const [index, token] of state.tokens.entries()) {
    const opens = state.tokens[index - 1];
    if (token.type === 'inline' && opens?.type === 'paragraph_open' && CAUTION.test(token.content)) {
      opens.attrJoin('class', 'caution');
    }
  }
});

markdown.core.ruler.push('headings', (state) => {
  const drop: unknown = state.env.dropHeadings;
  for (const token of state.tokens) {
    if (token.type !== 'heading_open' && token.type !== 'heading_close') continue;
    const level = Number(token.tag.slice(1)) + (typeof drop === 'number' ? drop : 0);
    token.tag = `h${Math.min(6, Math.max(2, level))}`;
  }
});

/** HTML of a Markdown text; headings go down by `dropHeadings` levels, and none is ever an h1. */
export function markdownHtml(text: string, dropHeadings = 0): string {
  return markdown.render(text, { dropHeadings }).trim();
}
