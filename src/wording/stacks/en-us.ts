/** American English for stacks: what differs from British. */
import { inAmerican } from '../american.ts';
import { withUsHeads } from '../us-heads.ts';
import { inchesText, withUsUnits } from '../us-units.ts';
import { enGbStacks } from './en-gb.ts';
import type { StackWords } from './stack-words.ts';

const gb = withUsUnits(withUsHeads(inAmerican(enGbStacks)));

const inFahrenheit = (text: string): string => text.replace('25\u00a0°C', '77\u00a0°F');

export const enUsStacks: StackWords = {
  ...gb,
  right: (mm) => `${inchesText(Number(mm))} right`,
  left: (mm) => `${inchesText(Number(mm))} left`,
  back: (mm) => `${inchesText(Number(mm))} back`,
  front: (mm) => `${inchesText(Number(mm))} front`,
  picture: {
    ...gb.picture,
    scale: (scale) => `Drawn 1 : ${scale}; the bar is 4 in`,
    key: (hasDowel, hasDummy) =>
      gb.picture.key(hasDowel, hasDummy).replace('Lengths in mm', 'Lengths in inches'),
  },
  cautions: {
    ...gb.cautions,
    'warm-and-cold': inFahrenheit(gb.cautions['warm-and-cold']),
    'warm-under-sheet': inFahrenheit(gb.cautions['warm-under-sheet']),
    'warm-and-mixed': inFahrenheit(gb.cautions['warm-and-mixed']),
  },
  doesNotStand: (tier, below, step) => gb.doesNotStand(tier, below, step).replace(' tin ', ' pan '),
  unknownWidth: gb.unknownWidth.replaceAll('tin', 'pan'),
};
