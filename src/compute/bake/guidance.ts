/**
 * What to set, when to look, and is a core or a band worth it? For one recipe and one tin: the dial (the
 * recipe's heat, lowered for wide tins by the edge dose), the windows with and without a core, and how many
 * logged bakes stand behind each.
 */
import type { CoreKind } from '../../domain/bake-log.ts';
import type { OvenSetting } from '../../domain/kitchen.ts';
import { quantiseMin, quantiseMm, quantiseRatio } from '../../domain/quantise.ts';
import { type Result, succeed } from '../../domain/result.ts';
import type { TinForm, TinMaterial } from '../../domain/tin.ts';
import { type NeutralBake, neutralBake } from './bake-case.ts';
import type { BakeConstants } from './constants.ts';
import { edgeDose, gentlestDialC, MOST_DOSE_K_MIN } from './edge-dose.ts';
import { type NoCore, noCoreBecause } from './heating-core.ts';
import type { BakeGroup, LogFit } from './log-fit.ts';
import { settableC } from './oven-scales.ts';
import { type BakeSolid, bakeSolid } from './solid.ts';
import { type BakeWindow, bakeWindow } from './window.ts';

export interface GuidanceAsk {
  tin: TinForm & { material?: TinMaterial };
  heightMm: number;
  /** The recipe's conventional oven setting, °C. */
  recipeOvenC: number;
  /** Core that the kitchen owns. */
  core: Exclude<CoreKind, 'none'>;
  band: boolean;
  /** An egg-white foam: no core is spoken of. */
  foam?: boolean;
  /** Settings that the dial can be turned to; any when left out. */
  dial?: OvenSetting['dial'];
}

/** One way to bake it. */
export interface BakeAdvice {
  /** Conventional setting, °C: the recipe's, or less where the edge would suffer. */
  dialC: number;
  window: BakeWindow;
  /** Logged bakes behind the window. */
  bakes: number;
  neutral: NeutralBake;
  /** Edge dose of a plain sponge at that dial, K·min. */
  edgeDoseKMin: number;
}

export interface BakeGuidance {
  plain: BakeAdvice;
  /** Null where the core's rule does not reach. */
  withCore: BakeAdvice | null;
  coreIsWorthIt: boolean;
  /** Why no core is spoken of; null where one is worth it. */
  noCore: NoCore | null;
  /** At the recipe's own heat, without a core, the edge would have more than its due: lower heat or a band. */
  edgeNeedsCare: boolean;
}

/** Guidance for a tin; fails when the oven is no hotter than a done cake. */
export function bakeGuidance(ask: GuidanceAsk, fit: LogFit, constants: BakeConstants): Result<BakeGuidance> {
  const plain = advice(ask, 'none', fit.plain, fit.doneSdMin, constants);
  if (!plain.ok) return plain;
  const cored = advice(ask, ask.core, fit.withCore, fit.doneSdMin, constants);
  const solid = bakeSolid(ask.tin, ask.heightMm);
  const dose = edgeDose(solid, ask.recipeOvenC, 'none', constants);
  const noCore = noCoreBecause(solid, { depthMm: ask.tin.depthMm, foam: ask.foam ?? false });
  return succeed({
    plain: plain.value,
    withCore: cored.ok ? cored.value : null,
    coreIsWorthIt: cored.ok && noCore === null,
    noCore,
    edgeNeedsCare: dose !== null && dose > MOST_DOSE_K_MIN,
  });
}

function advice(
  ask: GuidanceAsk,
  core: CoreKind,
  group: BakeGroup,
  doneSdMin: number,
  constants: BakeConstants,
): Result<BakeAdvice> {
  const solid = bakeSolid(ask.tin, ask.heightMm);
  const heatC = gentleHeatC(solid, ask.recipeOvenC, core, constants);
  const dialC = ask.dial === undefined ? heatC : settableC(heatC, ask.dial);
  const bake = neutralBake(
    { tin: ask.tin, heightMm: ask.heightMm, ovenC: dialC, core, band: ask.band },
    constants,
  );
  if (!bake.ok) return bake;
  return succeed({
    dialC,
    window: bakeWindow(group.belief, bake.value, { ...constants, doneSdMin }),
    bakes: group.bakes,
    neutral: quantised(bake.value),
    edgeDoseKMin: quantiseRatio(edgeDose(solid, dialC, core, constants) ?? 0),
  });
}

/** The recipe's heat where the edge can take it (the dose only grows with heat), else the most that it can. */
function gentleHeatC(solid: BakeSolid, recipeC: number, core: CoreKind, constants: BakeConstants): number {
  const dose = edgeDose(solid, recipeC, core, constants);
  if (dose !== null && quantiseRatio(dose) <= MOST_DOSE_K_MIN) return recipeC;
  const gentle = gentlestDialC(solid, core, constants);
  return gentle === null ? recipeC : Math.min(recipeC, quantiseRatio(gentle));
}

function quantised(bake: NeutralBake): NeutralBake {
  const { solid } = bake;
  return {
    solid: {
      sides: solid.sides.map(({ geometry, halfMm }) => ({ geometry, halfMm: quantiseMm(halfMm) })),
      acrossMm: quantiseMm(solid.acrossMm),
      heightMm: quantiseMm(solid.heightMm),
    },
    seriesMin: quantiseMin(bake.seriesMin),
    tinFactor: quantiseRatio(bake.tinFactor),
    bandFactor: quantiseRatio(bake.bandFactor),
    coreFactor: quantiseRatio(bake.coreFactor),
    neutralMin: quantiseMin(bake.neutralMin),
    lnSize: quantiseRatio(bake.lnSize),
  };
}
