/** American English for timetables and oven plans: what differs from British. */
import { inAmerican } from '../american.ts';
import { monthName } from '../date.ts';
import { inchesText, usUnitsInSentence } from '../us-units.ts';
import { enGbTimetable } from './en-gb.ts';
import type { TimetableWords } from './timetable-words.ts';

const gb = inAmerican(enGbTimetable);

function twelveHours(minuteOfDay: number): string {
  const [hour, minute] = [Math.floor(minuteOfDay / 60), minuteOfDay % 60];
  return `${hour % 12 === 0 ? 12 : hour % 12}:${String(minute).padStart(2, '0')}\u00a0${hour < 12 ? 'am' : 'pm'}`;
}

/** An oven has racks; shelves are for books. */
const onRacks = (text: string): string =>
  text.replace(/\b([Ss])hel(?:f|ves)\b/g, (word, first: string) => {
    const rack = first === 'S' ? 'Rack' : 'rack';
    return word.endsWith('f') ? rack : `${rack}s`;
  });

export const enUsTimetable: TimetableWords = {
  ...gb,
  day: (weekday, dayOfMonth, month) => `${weekday}, ${monthName(month)} ${dayOfMonth}`,
  clock: twelveHours,
  what: {
    ...gb.what,
    'turn-out': ({ cakes }) => `Turn out ${cakes}; wash the pans`,
  },
  wait: {
    ...gb.wait,
    'cool-in-tin': (until) => `Then cool in the pan until ${until}.`,
  },
  part: (go) => gb.part(go).replace('its tins', 'its pans'),
  bandOn: (cakes) => gb.bandOn(cakes).replace('band round', 'band around'),
  coreOut: (cakes) => gb.coreOut(cakes).replace('the tin,', 'the pan,'),
  planLead: gb.planLead.replace('tin', 'pan'),
  gaps: (air, wall, width, depth) =>
    usUnitsInSentence(
      `Racks of ${width} × ${depth} mm; ${air} mm of air between pans, ${wall} mm to walls, door and fan.`,
    ),
  scale: (scale, lengthMm) => `Racks drawn 1 : ${scale}; the bar is ${inchesText(lengthMm)} in`,
  seePlan: (load) => onRacks(gb.seePlan(load)),
  shelves: (fan) => onRacks(gb.shelves(fan)),
  shelf: (fromBottom, racks) => onRacks(gb.shelf(fromBottom, racks)),
  table: { ...gb.table, tin: 'Pan', shelf: 'Rack' },
  cautions: {
    ...gb.cautions,
    hot: 'Pans, racks and heating cores stay hot: dry cloths, both hands, children away.',
    chilled: (finishes) =>
      gb.cautions.chilled(finishes).replace('in the fridge, at 8 °C', 'refrigerated, at 41 °F'),
  },
};
