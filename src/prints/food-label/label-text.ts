/** A label's lines as paragraphs: the lead in italics, allergens in the bold cut. */
import type { LabelLine } from '../../views/label.types.ts';
import type { Paragraph, Span } from '../sheet/lines.ts';
import type { LabelType } from './label-type.ts';

/** Room for a date in handwriting. */
const TO_WRITE = '\u00a0'.repeat(2) + '_'.repeat(12);

export function labelParagraph({ lead, runs, toWrite }: LabelLine, type: LabelType): Paragraph {
  const leading: Span[] = lead === '' ? [] : [{ text: `${lead} `, font: 'textItalic' }];
  const place: Span[] = toWrite ? [{ text: `${TO_WRITE} ` }] : [];
  const said = runs.map(({ text, strong }): Span => (strong ? { text, font: 'textBold' } : { text }));
  return { spans: [...leading, ...place, ...said], type: type.text };
}
