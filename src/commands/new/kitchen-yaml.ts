/** The text of a new kitchen.yaml: the answers, and in comments what else can be said. */
import { stringify } from 'yaml';
import type { Locale } from '../../domain/kitchen.ts';
import type { KitchenAnswers } from './answers.ts';
import { USUAL_TINS } from './usual-tins.ts';

/** A word or a line as YAML, in quotes only where it needs them. */
const scalar = (text: string): string => stringify(text, { lineWidth: 0 }).trimEnd();

function tinLine({ id, owned }: KitchenAnswers['tins'][number]): string {
  const tin = USUAL_TINS.find((usual) => usual.id === id);
  if (tin === undefined) throw new Error(`no usual tin ${id}`);
  return `  - { id: ${id}, name: ${tin.name}, ${tin.size}, owned: ${owned} }`;
}

interface LocalLines {
  scale: string;
  oven: string;
  degrees: string;
  altitude: string;
  measured: string;
}

/** What is measured and said otherwise from country to country. */
const LOCAL: Record<Locale, LocalLines> = {
  'en-GB': {
    scale: '{ step: 5 g, fine_step: 0.5 g }',
    oven: '{ heat: fan, dial: C }          ',
    degrees: '°C',
    altitude: '1200 m  ',
    measured: '{ id: mould, name: Mould filled with water, shape: measured, volume: 1850 ml, depth: 90 mm }',
  },
  'en-US': {
    scale: '{ step: 0.1 oz, fine_step: 0.01 oz }',
    oven: '{ heat: convection, dial: F }   ',
    degrees: '°F',
    altitude: '4000 ft ',
    measured: '{ id: mold, name: Mold filled with water, shape: measured, volume: 8 cups, depth: 3 1/2in }',
  },
};

/** `edition` is the ISO date that the first build carries. */
export function kitchenYaml(answers: KitchenAnswers, edition: string): string {
  const { name, place, locale, paper, eggSize, bowl, tins } = answers;
  const local = LOCAL[locale];
  return `# Your kitchen. Every length, mass, volume and temperature carries its unit.
name: ${scalar(name)}
place: ${scalar(place)}
edition: ${edition}      # dates every page and print; move it on when figures change
locale: ${locale}
paper: [${paper.join(', ')}]
# site_url: https://bakery.example.org      # where the site will stand; prints then carry a code to their page

eggs:
  size: ${eggSize}
  # weighed: 51 g          # the mean of your own eggs, shelled; it wins over the table
  tolerance: 6 %           # how far a whole number of eggs may be from the exact one
  otherwise: step up       # or: weigh

scale: ${local.scale}
mixer: { bowl: ${bowl}, max_fill: 55 %, min_fill: 12 % }

# oven: ${local.oven}    # what your oven is; without it, conventional with a dial in ${local.degrees}
# altitude: ${local.altitude}                        # from 900 m up recipes are adjusted for thin air
# booklet: { edition_note: First edition, licence: For the buyer’s own kitchen; please do not copy. }

# Inside sizes, at the rim, with a steel rule. The unit you write is the unit that is printed first. Other shapes:
#   - { id: hexagon-8, name: Hexagon, shape: hexagon, flats: 8in, depth: 3in }
#   - { id: ring-10, name: Ring, shape: ring, across: 10in, tube: 3in, depth: 4in }
#   - ${local.measured}
tins:
${tins.map(tinLine).join('\n')}
`;
}
