/** kitchen.yaml: who bakes, with which eggs, scale, mixer and tins. */
import type { BunTin } from '../domain/bun-tin.ts';
import type { EggSize } from '../domain/egg.ts';
import { tableShelledG } from '../domain/egg.ts';
import type { EggSetting, Kitchen, MixerSetting, ScaleSetting } from '../domain/kitchen.ts';
import type { Problem } from '../domain/problem.ts';
import type { Tin } from '../domain/tin.ts';
import { type KitchenExtras, readExtras } from './kitchen-extras.ts';
import type { KnownNames } from './known-names.ts';
import { parseSiteUrl } from './names.ts';
import { readOvens } from './ovens.ts';
import { error } from './problems.ts';
import { quote } from './quote.ts';
import { kitchenSchema } from './schemas/kitchen-schema.ts';
import { readBunTins } from './tins/bun-tins.ts';
import { type Drawings, readTin } from './tins/tin-entry.ts';
import { parseBatterTemperature } from './units/batter-temperature.ts';
import { parseDay } from './units/date.ts';
import { parseEggSize, parseShelledMass } from './units/egg-size.ts';
import { parseMass } from './units/mass.ts';
import { parseShare } from './units/share.ts';
import { parseVolume } from './units/volume.ts';
import { plainLines } from './yaml/readable-text.ts';
import { complete, isSound, present, type YamlReader, yamlReader } from './yaml/yaml-reader.ts';
import { yamlSource } from './yaml/yaml-source.ts';

const DEFAULTS = { tolerance: 0.06, stepG: 5, fineStepG: 0.5, maxFill: 0.55, minFill: 0.12, fairyCaseG: 25 };

export interface KitchenOutcome {
  /** Null when anything in the file is wrong. */
  kitchen: Kitchen | null;
  /** The tins that could be read, whatever else is wrong. */
  tins: Tin[];
  /** Ids of tins that are there but wrong; null when the file could not be read at all. */
  brokenTins: string[] | null;
  /** The same of tins of several cups. */
  bunTins: BunTin[];
  brokenBunTins: string[] | null;
  /** The ovens' ids; null when the file could not be read at all. */
  ovens: KnownNames | null;
  /** The egg setting, whatever else is wrong. */
  egg: EggSetting | null;
  /** Altitude, finishing and printing; null when the file could not be read at all. */
  extras: KitchenExtras | null;
  problems: Problem[];
}

function eggGrams(size: EggSize | undefined, weighedG: number | undefined): number | null {
  return weighedG ?? (size === undefined ? null : tableShelledG(size));
}

function readEggs(reader: YamlReader): EggSetting | null {
  if (!reader.has('eggs')) return null;
  if (!reader.has('eggs', 'size') && !reader.has('eggs', 'weighed')) {
    const hint = "Add 'size: UK medium', or 'weighed: 51 g' for the mean of your own eggs without shell.";
    reader.report(error('egg-setting-missing', 'The kitchen does not say what its eggs weigh', hint), 'eggs');
  }
  const size = reader.parsed((text) => parseEggSize(text), 'eggs', 'size');
  const weighedG = reader.parsed(parseShelledMass, 'eggs', 'weighed');
  const shelledG = eggGrams(size, weighedG);
  const tolerance = reader.parsed((text) => parseShare(text, { zero: true }), 'eggs', 'tolerance');
  if (shelledG === null) return null;
  return {
    size: size ?? null,
    shelledG,
    source: weighedG === undefined ? 'table' : 'weighed',
    tolerance: tolerance ?? DEFAULTS.tolerance,
    otherwise: reader.word(['weigh'] as const, 'eggs', 'otherwise') ?? 'step-up',
  };
}

function readScale(reader: YamlReader): ScaleSetting {
  const stepG = reader.parsed(parseMass, 'scale', 'step') ?? DEFAULTS.stepG;
  const fineStepG = reader.parsed(parseMass, 'scale', 'fine_step') ?? Math.min(stepG, DEFAULTS.fineStepG);
  if (fineStepG > stepG) {
    const hint = 'The fine step is for raising agents, salt and spices; swap the two, or leave one out.';
    const message = `The fine step (${fineStepG} g) is larger than the step (${stepG} g)`;
    reader.report(error('scale-steps-swapped', message, hint), 'scale', 'fine_step');
  }
  return { stepG, fineStepG };
}

function readMixer(reader: YamlReader): MixerSetting | null {
  const bowlMl = reader.parsed(parseVolume, 'mixer', 'bowl')?.ml;
  const maxFill = reader.parsed(parseShare, 'mixer', 'max_fill') ?? DEFAULTS.maxFill;
  const minFill =
    reader.parsed((text) => parseShare(text, { zero: true }), 'mixer', 'min_fill') ?? DEFAULTS.minFill;
  if (minFill >= maxFill) {
    const percent = (share: number): string => `${Math.round(share * 1000) / 10} %`;
    const message = `The bowl's smallest fill (${percent(minFill)}) is not below its largest (${percent(maxFill)})`;
    const path = ['mixer', reader.has('mixer', 'min_fill') ? 'min_fill' : 'max_fill'];
    reader.report(
      error('mixer-fills-swapped', message, 'Swap the two, or leave them out for 12 % and 55 %.'),
      ...path,
    );
  }
  return bowlMl === undefined ? null : { bowlMl, maxFill, minFill };
}

function readTins(reader: YamlReader, drawings: Drawings): { tins: Tin[]; broken: string[] } {
  const tins: Tin[] = [];
  const broken: string[] = [];
  const lines = new Map<string, number>();
  for (let index = 0; index < reader.items('tins'); index += 1) {
    const path = ['tins', index] as const;
    const id = reader.text(...path, 'id');
    const tin = readTin(reader, path, drawings);
    const earlier = id === undefined ? undefined : lines.get(id);
    if (id !== undefined && earlier !== undefined) {
      const message = `Another tin is called ${quote(id)} already, on line ${earlier}`;
      const hint = "Give each its own id; several of one kind are one entry with 'owned: 2'.";
      reader.report(error('tin-id-repeated', message, hint), ...path, 'id');
    } else if (id !== undefined) {
      lines.set(id, reader.source.at([...path, 'id']).line ?? 0);
      if (tin === null) broken.push(id);
      else tins.push(tin);
    }
  }
  return { tins, broken };
}

/** The outcome for a file that could not be read at all. */
export function unreadKitchen(problems: Problem[]): KitchenOutcome {
  return {
    ...{ kitchen: null, tins: [], brokenTins: null, bunTins: [], brokenBunTins: null },
    ...{ ovens: null, egg: null, extras: null, problems },
  };
}

/** The kitchen of kitchen.yaml's text, or everything that is wrong with it. */
export function parseKitchenYaml(text: string, file: string, drawings: Drawings = new Map()): KitchenOutcome {
  const source = yamlSource(plainLines(text), file);
  if (!source.ok) return unreadKitchen(source.problems);
  const reader = yamlReader(source.value, kitchenSchema);
  const { tins, broken } = readTins(reader, drawings);
  const { bunTins, broken: brokenBunTins } = readBunTins(reader, [...tins.map(({ id }) => id), ...broken]);
  const egg = readEggs(reader);
  const ovens = readOvens(reader);
  const extras = readExtras(reader);
  const whole = complete<Kitchen>({
    name: reader.text('name'),
    place: reader.text('place'),
    edition: reader.parsed(parseDay, 'edition'),
    locale: reader.word(['en-GB', 'en-US'] as const, 'locale'),
    paper: papers(reader),
    egg: egg ?? undefined,
    scale: readScale(reader),
    mixer: readMixer(reader) ?? undefined,
    fairyCaseG: reader.has('fairy_case') ? reader.parsed(parseMass, 'fairy_case') : DEFAULTS.fairyCaseG,
    tins,
  });
  const optional = present({
    baker: reader.text('baker'),
    siteUrl: reader.parsed(parseSiteUrl, 'site_url'),
    oven: ovens.oven,
    furtherOvens: ovens.further.length === 0 ? undefined : ovens.further,
    batterC: reader.parsed(parseBatterTemperature, 'batter_temperature'),
    bunTins: bunTins.length === 0 ? undefined : bunTins,
  });
  const kitchen = whole !== null && isSound(reader.problems) ? { ...whole, ...optional } : null;
  return {
    ...{ kitchen, tins, brokenTins: broken, bunTins, brokenBunTins },
    ...{ ovens: ovens.names, egg, extras, problems: reader.problems },
  };
}

/** Each paper once, in the order written. */
function papers(reader: YamlReader): Kitchen['paper'] | undefined {
  const written = reader.texts('paper');
  if (written === undefined) return undefined;
  const known = (['A4', 'Letter'] as const).filter((paper) => written.includes(paper));
  return [...known].sort((a, b) => written.indexOf(a) - written.indexOf(b));
}
