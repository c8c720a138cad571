/** A method in pieces that any output can set: headings, paragraphs and list items with their emphasis. */
export interface MethodSpan {
  text: string;
  emphasis: 'none' | 'strong' | 'italic';
}

export interface MethodHeading {
  kind: 'heading';
  text: string;
}

export interface MethodParagraph {
  kind: 'paragraph';
  spans: MethodSpan[];
  /** Opens with a bold 'Caution' or 'Allergens'. */
  caution: boolean;
}

export interface MethodItem {
  kind: 'item';
  /** '1.' in a numbered list, null in a plain one. */
  number: string | null;
  /** Its own for every list of a method. */
  list: string;
  spans: MethodSpan[];
}

export type MethodPiece = MethodHeading | MethodParagraph | MethodItem;
