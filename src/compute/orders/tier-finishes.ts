/**
 * What goes between, around and over one tier, from the inside out: a coat lies on the coat before it, and a sheet
 * goes over everything that is already on. A soft filling is held in by a bead of the tier's own buttercream or
 * ganache; where it has none, the filling runs to the edge.
 */
import type { Finish, FinishKind } from '../../domain/finish.ts';
import type { FinishingSettings } from '../../domain/finishing.ts';
import type { FinishAsk, TierAsk } from '../../domain/order.ts';
import { quantiseG, quantiseMl, quantiseMm } from '../../domain/quantise.ts';
import type { Tin } from '../../domain/tin.ts';
import { type FinishAmount, finishAmount } from '../finishes/amount.ts';
import { cakePlan } from '../finishes/cake-plan.ts';
import { coatMl, domeCoatMl } from '../finishes/coat.ts';
import { damAmount } from '../finishes/dam.ts';
import { finishingFor } from '../finishes/finishing.ts';
import type { CakePlan } from '../finishes/plan.ts';
import { named } from './order-content.ts';
import type { TierFinish } from './planned-order.types.ts';

const SOFT: readonly FinishKind[] = ['jam', 'curd', 'cream'];
const FIRM: readonly FinishKind[] = ['buttercream', 'ganache'];

export interface FinishedTier {
  finishes: TierFinish[];
  builtHeightMm: number;
  coatedHeightMm: number;
  coatedAcrossMm: number | null;
  boardAcrossMm: number | null;
  ribbonMm: number | null;
}

interface Cake {
  tin: Tin;
  count: number;
  layers: number;
  heightMm: number;
}

interface Used {
  finish: Finish;
  use: FinishAsk['use'];
  colour?: string;
}

/** Every colour has a bowl of its own: a tenth on top of what is needed, common practice, no source. */
const COLOUR_LOSS_SHARE = 0.1;

/** As much more as a bowl of its own keeps beyond what the finish loses anyway; a sheet is rolled out, not scraped. */
function tinted(amount: FinishAmount, { finish, use, colour }: Used): FinishAmount {
  if (colour === undefined || use === 'rolled' || finish.lossShare >= COLOUR_LOSS_SHARE) return amount;
  const more = (1 + COLOUR_LOSS_SHARE) / (1 + finish.lossShare);
  return {
    ...amount,
    makeG: amount.makeG * more,
    buyG: amount.buyG * more,
    partsG: amount.partsG.map((grams) => grams * more),
  };
}

/** A finish as if it could be used in this one way only. */
const onlyFor = ({ finish, use }: Used): Finish => ({ ...finish, use: { [use]: finish.use[use] } });

const fillingMm = ({ finish, use }: Used): number =>
  use === 'filling' ? (finish.use.filling?.thicknessMm ?? 0) : 0;

/** How far a finish moves the outside of the cake, mm. */
function outwardsMm({ finish, use }: Used): number {
  if (use === 'coating') return (finish.use.coating?.crumbMm ?? 0) + (finish.use.coating?.finalMm ?? 0);
  return use === 'rolled' ? (finish.use.rolled?.thicknessMm ?? 0) : 0;
}

/** The same for so many cakes. */
export const times = (amount: FinishAmount, count: number): FinishAmount => ({
  ...amount,
  neededMl: quantiseMl(amount.neededMl * count),
  neededG: quantiseG(amount.neededG * count),
  makeG: quantiseG(amount.makeG * count),
  buyG: quantiseG(amount.makeG * count),
  partsG: amount.partsG.map((grams) => quantiseG(grams * count)),
});

/** The holder of soft fillings, when this tier has something firm to pipe. */
const damOf = (used: readonly Used[]): Finish | undefined =>
  used.some(({ finish, use }) => use === 'filling' && SOFT.includes(finish.kind))
    ? used.find(({ finish }) => FIRM.includes(finish.kind))?.finish
    : undefined;

function coatAmount(used: Used, plan: CakePlan, cake: Cake, onMm: number): FinishAmount[] {
  const { coating } = used.finish.use;
  if (coating === undefined) return [];
  const { shape } = cake.tin;
  const upTo = (mm: number): number =>
    shape.kind === 'dome'
      ? domeCoatMl(shape.acrossMm, cake.heightMm, mm)
      : coatMl(plan, cake.heightMm, mm, coating.corners);
  const before = onMm === 0 ? 0 : upTo(onMm);
  return [finishAmount(used.finish, 'coating', upTo(onMm + outwardsMm(used)) - before)];
}

function amountsOf(used: Used, plan: CakePlan, cake: Cake, settings: FinishingSettings): FinishAmount[] {
  if (used.use === 'coating') return coatAmount(used, plan, cake, settings.undercoatMm);
  const soft = used.use === 'filling' && SOFT.includes(used.finish.kind);
  const own = { ...settings, damMm: soft ? settings.damMm : 0 };
  return finishingFor(cake.tin, [onlyFor(used)], own)?.amounts ?? [];
}

/** Everything that goes on a tier; the cakes of a tin of unknown width have nothing and no board. */
export function finishedTier(
  ask: Pick<TierAsk, 'finishes'>,
  cake: Cake,
  all: readonly Finish[],
  settings: FinishingSettings,
): FinishedTier {
  const used = ask.finishes.map(
    ({ finishId, use, colour }): Used => ({
      ...{ finish: named(all, finishId), use },
      ...(colour === undefined ? {} : { colour }),
    }),
  );
  const joints = Math.max(0, cake.layers - 1);
  const risesMm =
    cake.tin.shape.kind === 'dome' ? 0 : joints * used.reduce((sum, one) => sum + fillingMm(one), 0);
  const builtHeightMm = quantiseMm(cake.heightMm + risesMm);
  const built = { ...cake, heightMm: builtHeightMm };
  const base = { ...settings, cakeHeightMm: builtHeightMm, layers: cake.layers, undercoatMm: 0 };
  const plan = cakePlan(cake.tin);
  const outMm = used.reduce((sum, one) => sum + outwardsMm(one), 0);
  const coatedHeightMm = quantiseMm(builtHeightMm + outMm);
  const around = plan === null ? null : finishingFor(cake.tin, [], { ...base, undercoatMm: outMm });
  if (plan === null || around === null) {
    const unknown = { coatedAcrossMm: null, boardAcrossMm: null, ribbonMm: null };
    return { finishes: [], builtHeightMm, coatedHeightMm, ...unknown };
  }
  const holder = damOf(used);
  const withDam = { ...base, damMm: holder === undefined ? 0 : settings.damMm };
  let onMm = 0;
  const finishes = used.flatMap((one): TierFinish[] => {
    const amounts = amountsOf(one, plan, built, { ...withDam, undercoatMm: onMm });
    onMm += outwardsMm(one);
    return amounts.map((amount) => ({
      finish: one.finish,
      use: amount.use,
      ...(one.colour === undefined ? {} : { colour: one.colour }),
      amount: times(tinted(amount, one), cake.count),
    }));
  });
  const dam = holder === undefined ? null : damAmount(plan, holder, withDam);
  if (holder !== undefined && dam !== null) {
    // It is piped before the soft filling goes in.
    const at = finishes.findIndex(({ finish, use }) => use === 'filling' && SOFT.includes(finish.kind));
    finishes.splice(at, 0, { finish: holder, use: 'dam', amount: times(dam, cake.count) });
  }
  const { coatedAcrossMm, boardAcrossMm, ribbonMm } = around;
  return { finishes, builtHeightMm, coatedHeightMm, coatedAcrossMm, boardAcrossMm, ribbonMm };
}
