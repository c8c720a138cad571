/** British English for the working behind fillings and coatings. */
import type { FinishingStepWords, FinishingWorkingWords } from './working-words.ts';

const step = (title: string, rule: string, source: string): FinishingStepWords => ({ title, rule, source });

const TRADE = 'common practice, no source';
const KITCHEN = 'this kitchen’s own setting';
const STEINER =
  'Steiner’s formula for parallel bodies (Integral Geometry and Geometric Probability, Santaló, 1976, chapter 1, from memory)';
const OUTLINE = 'the outline the tin is drawn and measured by';
const CAP = 'volume of a spherical cap, geometry';

export const enGbFinishingWorking: FinishingWorkingWords = {
  title: 'Fillings and coatings: the working',
  description: 'How every amount of filling and coating came about.',
  at: (thickness) => `At ${thickness}`,
  why: 'Why',
  whyOf: (tin) => `Why, ${tin}`,
  steps: {
    area: step('Plan of the cake', 'The area inside the tin, seen from above.', OUTLINE),
    wall: step('Way round the cake', 'The length of the tin’s wall, a hole’s wall with it.', OUTLINE),
    'grown-area': step(
      'Plan with its coat',
      'A coat widens the plan by its thickness all round: the wall times the thickness, and round corners that together make a circle.',
      STEINER,
    ),
    'grown-area-sharp': step(
      'Plan with its coat, sharp corners',
      'As with round corners, but each corner is filled out to its point: the corner factor takes the place of π.',
      STEINER,
    ),
    'grown-area-drawn': step(
      'Plan with its coat',
      'Inner corners fill up and holes shrink, so no formula holds: the outline itself is grown and measured, by machine. Only this step cannot be done on paper.',
      OUTLINE,
    ),
    'grown-wall': step('Way round the coated cake', 'Each millimetre of coat adds 2π to it.', STEINER),
    'grown-wall-drawn': step(
      'Way round the coated cake',
      'Measured on the grown outline, by machine.',
      OUTLINE,
    ),
    'outside-wall': step(
      'Way round the outside, coated',
      'A ribbon goes round the outside only; measured on the grown outline, by machine.',
      OUTLINE,
    ),
    'filling-volume': step(
      'Filling',
      'All joints together: the plan less the band of the dam, times the thickness. A dam wider than the plan leaves no filling.',
      TRADE,
    ),
    'dam-volume': step('Dam', 'A round bead along the middle of its band, in every joint.', TRADE),
    'coat-volume': step(
      'Coat',
      'The coated solid less the cake itself; the base stands bare on its board.',
      STEINER,
    ),
    sphere: step('Sphere of the dome', 'The ball that the dome is a cap of.', CAP),
    'dome-coat-volume': step('Coat on the dome', 'The larger cap less the cake itself.', CAP),
    'glaze-volume': step(
      'Glaze',
      'A glaze is poured over a coat: the coated solid with the glaze on it less the one without.',
      STEINER,
    ),
    'dome-glaze-volume': step(
      'Glaze on the dome',
      'The cap with the glaze less the coated cap below it.',
      CAP,
    ),
    'sheet-round': step('Sheet, across', 'Over the top, down both sides, and a trim on each.', TRADE),
    'sheet-wide': step('Sheet, one way', 'Over the top, down both sides, and a trim on each.', TRADE),
    'sheet-long': step('Sheet, the other way', 'The same along the cake.', TRADE),
    'roll-volume': step(
      'Rolled out',
      'The whole sheet at its thickness; trimmings can be used again.',
      TRADE,
    ),
    'sheet-on-cake': step('On the cake', 'What stays once it is trimmed: the top and the wall.', TRADE),
    'dome-sheet-on-cake': step('On the dome', 'The cap with the sheet less the cap below it.', CAP),
    syrup: step('Syrup', 'One face of every layer is brushed.', TRADE),
    needed: step('On the cake', 'Volume times what a millilitre weighs.', KITCHEN),
    made: step('To make', 'With what stays in bowl, bag and on the scraper.', KITCHEN),
    bought: step('To buy', 'Up to whole packets.', KITCHEN),
    'part-share': step(
      'Of every gram made',
      'A part’s share by weight, with what boils away put back. The scale’s steps round what is weighed, never by more than 2 %.',
      'the finish’s own recipe',
    ),
    'coated-across': step(
      'Coated cake, across',
      'The wider way of the cake and the coat on both sides.',
      TRADE,
    ),
    'coated-height': step('Coated cake, height', 'The sponge and the coat on top.', TRADE),
    board: step('Board', 'The coated cake and its margin, up to the next whole inch.', KITCHEN),
    'box-height': step('Box, height inside', 'Coated cake, board and the air above it.', KITCHEN),
    ribbon: step('Ribbon', 'Once round, and the lap.', KITCHEN),
  },
  labels: {
    across: 'across',
    length: 'length',
    width: 'width',
    area: 'plan',
    wall: 'wall',
    thickness: 'thickness',
    'grown-area': 'plan with coat',
    'grown-wall': 'wall with coat',
    'glazed-area': 'plan with coat and glaze',
    glazed: 'coat and glaze',
    corners: 'corner factor',
    joints: 'joints',
    dam: 'bead of the dam',
    height: 'height',
    volume: 'volume',
    radius: 'half across',
    sphere: 'radius of the ball',
    around: 'circle that holds it',
    undercoat: 'coat below',
    trim: 'trim',
    sheet: 'sheet',
    layers: 'layers',
    'per-face': 'g on a cm²',
    density: 'density',
    needed: 'on the cake',
    loss: 'loss',
    made: 'to make',
    pack: 'packet',
    bought: 'to buy',
    part: 'parts of it',
    parts: 'parts in all',
    'cooking-loss': 'boils away',
    share: 'of every gram',
    'coated-across': 'across',
    'coated-height': 'height',
    margin: 'margin',
    board: 'board',
    thick: 'board, thick',
    clearance: 'air above',
    box: 'inside height',
    lap: 'lap',
    ribbon: 'ribbon',
  },
};
