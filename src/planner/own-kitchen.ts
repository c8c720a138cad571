/**
 * The kitchen of whoever holds the phone: which tins they own, their eggs, bowl and scale, as text they wrote. It is
 * laid over the published kitchen; what they did not say stays as published. Kept on the device and nowhere else.
 */
import type { Kitchen } from '../domain/kitchen.ts';
import type { Problem } from '../domain/problem.ts';
import type { Tin } from '../domain/tin.ts';
import { parseSpec, type SpecContext } from '../parse/spec.ts';
import { parseEggWeight } from '../parse/units/egg-size.ts';
import { parseMass } from '../parse/units/mass.ts';
import { parseVolume } from '../parse/units/volume.ts';

export interface OwnTin {
  /** 'round 7in x 3in'. */
  description: string;
  owned: number;
}

export interface OwnKitchen {
  /** How many of the published tins stand on this shelf; those not named stay as published. */
  owned: Record<string, number>;
  tins: OwnTin[];
  /** As written; empty for the published kitchen's. */
  egg: string;
  bowl: string;
  step: string;
  /** Text of a kitchen.yaml that was opened; it takes the published kitchen's place. Empty for none. */
  file: string;
  /** Packs and prices by ingredient: '500 g 1.05, 1 kg 1.69'. */
  prices: Record<string, string>;
}

export const NO_OWN_KITCHEN: OwnKitchen = {
  ...{ owned: {}, tins: [], egg: '', bowl: '', step: '', file: '' },
  prices: {},
};

export interface KitchenHere {
  kitchen: Kitchen;
  problems: Problem[];
}

/** A tin of one's own is known by its description. */
function ownTins({ tins }: OwnKitchen, context: SpecContext): { tins: Tin[]; problems: Problem[] } {
  const found: Tin[] = [];
  const problems: Problem[] = [];
  for (const { description, owned } of tins) {
    const parsed = parseSpec(`1 x ${description}`, context);
    if (!parsed.ok) problems.push(...parsed.problems);
    else found.push(...parsed.value.map(({ tin }) => ({ ...tin, id: description, owned })));
  }
  return { tins: found, problems };
}

/** The published kitchen with this one's own things in place. */
export function kitchenHere(
  published: Kitchen,
  own: OwnKitchen,
  outlines: SpecContext['outlines'],
): KitchenHere {
  const problems: Problem[] = [];
  const taken = <T>(
    text: string,
    parse: (text: string) => { ok: true; value: T } | { ok: false; problems: Problem[] },
  ): T | null => {
    if (text.trim() === '') return null;
    const parsed = parse(text);
    if (parsed.ok) return parsed.value;
    problems.push(...parsed.problems);
    return null;
  };
  const egg = taken(own.egg, (text) => parseEggWeight(text, published.egg.size?.scheme));
  const bowlMl = taken(own.bowl, parseVolume);
  const stepG = taken(own.step, parseMass);
  const described = ownTins(own, { tins: published.tins, outlines });
  problems.push(...described.problems);
  const tins = published.tins.map((tin) => ({ ...tin, owned: own.owned[tin.id] ?? tin.owned }));
  return {
    kitchen: {
      ...published,
      egg: egg === null ? published.egg : { ...published.egg, ...egg },
      mixer: bowlMl === null ? published.mixer : { ...published.mixer, bowlMl: bowlMl.ml },
      scale: stepG === null ? published.scale : { ...published.scale, stepG },
      tins: [...tins, ...described.tins],
    },
    problems,
  };
}
