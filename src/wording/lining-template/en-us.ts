/** US English for the lining templates. */
import { inAmerican } from '../american.ts';
import { enGbTemplates } from './en-gb.ts';
import type { TemplateWords } from './template-words.ts';

const gb = inAmerican(enGbTemplates);

export const enUsTemplates: TemplateWords = {
  ...gb,
  summary: (size) => `Patterns at true size. The pan: ${size}.`,
  levels: 'Leveling strip',
  guides: { ...gb.guides, rim: 'Rim of the pan' },
  centre: 'Center',
  notes: {
    ...gb.notes,
    followed: 'The base follows the pan’s own outline; try it in the pan before you cut a stack.',
    trace: (clearance) =>
      `There is no pattern for the base: parts of it are too narrow to be drawn ${clearance} mm smaller. Stand the pan on baking paper, draw round it, and cut just inside the line.`,
    curvedWall:
      'There is no paper for this pan: a flat sheet cannot follow its curve. Brush it with melted fat, dust it with flour and tip out what does not cling.',
    unknownShape:
      'There is no pattern for this pan: its walls are not measured, only what it holds. Brush every ridge with melted fat or oil, dust it with flour and tip out what does not cling.',
    levels: (height, layers) =>
      `The leveling strip stands on the board round a cake of ${height} mm in ${layers === 1 ? 'one layer' : `${layers} equal layers`}: mark the sponge at each line, then cut. Short marks ‘as baked’ show how high the recipes come out of this pan.`,
    board: (undercoat) =>
      `The broken line on the board is the cake from the pan, before a coat of ${undercoat} mm; the cross is the middle.`,
    ownNote: (note) => `Your note on this pan: ${note}.`,
  },
  cautions: {
    ...gb.cautions,
    'levels-touch-cake':
      'The leveling strip touches cake only when it has been drawn on baking paper, or has film round it.',
  },
};
