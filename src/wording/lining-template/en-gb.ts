/** British English for the lining templates. */
import type { TemplateWords } from './template-words.ts';

const NUMBERS = ['none', 'one', 'two', 'three', 'four'];

export const enGbTemplates: TemplateWords = {
  title: (tin) => `Lining templates: ${tin}`,
  summary: (size) => `Patterns at true size. The tin: ${size}.`,
  base: 'Base',
  side: 'Side strip',
  tube: 'Tube strip',
  longSide: 'Long side',
  shortSide: 'Short side',
  levels: 'Levelling strip',
  board: 'Cake board',
  numbered: (name, number) => `${name} ${number}`,
  cut: (count) => `Cut ${NUMBERS[count] ?? count}`,
  across: (mm) => `${mm} mm across`,
  by: (width, height) => `${width} × ${height} mm`,
  strip: (length, height) => `${length} mm long, ${height} mm high`,
  sector: (inner, outer, degrees) => `Part of a ring, radii ${inner} mm and ${outer} mm, through ${degrees}°`,
  panel: (foot, head, height) => `${foot} mm at the foot, ${head} mm at the head, ${height} mm high`,
  guides: {
    rim: 'Rim of the tin',
    lap: 'Ends lap to here',
    foot: 'Foot: stands on the base',
    board: 'Foot: stands on the board',
    cake: 'The cake, before its coat',
    layer: (layer, mm) => `Top of layer ${layer}: ${mm} mm`,
    top: (mm) => `Top of the cake: ${mm} mm`,
    bake: (mm) => `As baked: ${mm} mm`,
  },
  centre: 'Centre',
  notes: {
    base: (clearance) =>
      `The base paper is ${clearance} mm smaller than the base all round: paper and folds take room.`,
    followed: 'The base follows the tin’s own outline; try it in the tin before you cut a stack.',
    strip: (lap, collar) =>
      `Strips stand ${collar} mm above the rim, and their ends lap by ${lap} mm: wrap the strip to the broken line.`,
    sector: 'Curved papers fit a wall that slopes: the edge marked ‘foot’ goes down.',
    panel: 'The side papers are wider at the head because the wall slopes: the narrow edge goes down.',
    trace: (clearance) =>
      `There is no pattern for the base: parts of it are too narrow to be drawn ${clearance} mm smaller. Stand the tin on baking paper, draw round it, and cut just inside the line.`,
    curvedWall:
      'There is no paper for this tin: a flat sheet cannot follow its curve. Brush it with melted fat, dust it with flour and tip out what does not cling.',
    unknownShape:
      'There is no pattern for this tin: its walls are not measured, only what it holds. Brush every ridge with melted fat or oil, dust it with flour and tip out what does not cling.',
    levels: (height, layers) =>
      `The levelling strip stands on the board round a cake of ${height} mm in ${layers === 1 ? 'one layer' : `${layers} equal layers`}: mark the sponge at each line, then cut. Layers of an order may be lower: measure them by its day sheet. Short marks ‘as baked’ show how high the recipes come out of this tin.`,
    board: (undercoat) =>
      `The broken line on the board is the cake from the tin, before a coat of ${undercoat} mm; the cross is the middle.`,
    ownNote: (note) => `Your note on this tin: ${note}.`,
  },
  cautions: {
    'pattern-not-food-safe':
      'These sheets are patterns for cutting baking paper, and are not themselves food safe. Cut the pattern out, draw round it on baking paper, and keep the printed sheet out of the oven and off the cake.',
    'paper-near-element':
      'Paper that stands above the rim must not touch the top or the element of the oven: trim it where the shelf sits high.',
    'levels-touch-cake':
      'The levelling strip touches cake only when it has been drawn on baking paper, or has film round it.',
    'board-not-food-safe':
      'The board pattern is for marking and cutting a food-safe board; a cake does not stand on printed paper or on bare cardboard.',
    'flour-allergen':
      'Flour for dusting is an allergen on the cake: for someone who must avoid it, use something from the recipe itself.',
  },
};
