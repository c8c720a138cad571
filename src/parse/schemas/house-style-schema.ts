import * as z from 'zod';
import { keys, length, line } from './keys.ts';

const colour = (what: string): z.ZodString =>
  z.string().meta({ description: what, examples: ['#fffdf8'], pattern: '^#[0-9a-fA-F]{6}$' });

const palette = keys({
  paper: colour('Background'),
  ink: colour('Text'),
  quiet_ink: colour('Less important text'),
  rule: colour('Lines'),
  accent: colour('Headings and links'),
  accent_ink: colour('Text on the accent'),
  tint: colour('Bands in tables'),
  caution: colour('Cautions'),
});

const font = (what: string): z.ZodString => line(what, 'bundled:Source Sans 3/400Regular');

/** content/house-style.yaml */
export const houseStyleSchema = keys({
  name: line('Name of the style', 'Plain'),
  colours: keys({
    light: palette.meta({ description: 'On light paper, and on every print' }),
    dark: palette.meta({ description: 'On screens that ask for dark' }),
  }).meta({ description: 'As #rrggbb; text that is hard to read on its ground is a warning' }),
  fonts: keys({
    text: font('Text: bundled:FAMILY/CUT or a file below content'),
    text_bold: font('Bold text'),
    text_italic: font('Italic text'),
    heading: font('Headings'),
  }).meta({ description: 'Four cuts, each bundled or your own' }),
  logo: line('An SVG file below content', 'assets/logo.svg').optional(),
  heading_case: z
    .enum(['as written', 'small capitals'])
    .optional()
    .meta({ description: 'How headings are set', default: 'as written' }),
  margins: keys({
    top: length('Margin of every print', '14 mm'),
    right: length('Margin of every print', '14 mm'),
    bottom: length('Margin of every print', '16 mm'),
    left: length('Margin of every print', '14 mm'),
  }).meta({ description: 'White round every print' }),
});
