/**
 * Do these finishes go together on one cake? Fresh cream and curd need the fridge, and a rolled sheet draws
 * water there and weeps: common practice, no source; chilled food at 8 °C or below: Food Safety and Hygiene
 * (England) Regulations 2013, Schedule 4.
 */

import type { Finish } from '../../domain/finish.ts';
import type { Warning } from '../../domain/problem.ts';
import { isPoured } from './poured.ts';

const orList = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} or ${names[names.length - 1] ?? ''}`;

const isOutside = ({ use }: Finish): boolean => use.coating !== undefined || use.rolled !== undefined;

/** What lies right under a coat: the last coat or sheet before it. */
const groundOf = (finishes: readonly Finish[], at: number): Finish | undefined =>
  finishes.slice(0, at).findLast(isOutside);

/** Royal icing needs a dry ground that gives nothing off: marzipan, or royal icing; anything fatty stains it. */
function icingClashes(finishes: readonly Finish[]): Warning[] {
  const at = finishes.findIndex(({ kind, use }) => kind === 'royal icing' && use.coating !== undefined);
  const icing = finishes[at];
  if (icing === undefined) return [];
  const under = groundOf(finishes, at);
  if (under?.kind === 'marzipan' || under?.kind === 'royal icing') return [];
  const ground = under === undefined ? 'the bare cake' : under.name;
  const message = `${icing.name} goes on ${ground}, which stains it and lets it crack: put marzipan under it and let that dry hard.`;
  return [{ code: 'icing-without-marzipan', message }];
}

/**
 * A glaze runs thin over what is even, cold and firm, and is the last thing on a cake: crumb drinks it, its warmth
 * melts fresh cream, and nothing holds on it. Common practice, no source.
 */
function glazeClashes(finishes: readonly Finish[]): Warning[] {
  return finishes.flatMap((glaze, at): Warning[] => {
    if (!isPoured(glaze) || glaze.use.coating === undefined) return [];
    const under = groundOf(finishes, at);
    const over = finishes.slice(at + 1).find(isOutside);
    return [
      ...(under === undefined
        ? [
            {
              code: 'glaze-on-bare-cake',
              message: `${glaze.name} goes on the bare cake, which drinks it and shows through: put a thin coat under it and chill that firm.`,
            },
          ]
        : []),
      ...(under?.kind === 'cream'
        ? [
            {
              code: 'glaze-on-cream',
              message: `${glaze.name} is poured warm and melts ${under.name} under it: put ganache or buttercream under it and chill that firm.`,
            },
          ]
        : []),
      ...(over === undefined
        ? []
        : [
            {
              code: 'glaze-covered',
              message: `${over.name} goes over ${glaze.name}, where it does not hold: a glaze is the last coat.`,
            },
          ]),
    ];
  });
}

/** Named warnings for finishes used together, whatever their order. `cream-under-sheet` must not be made. */
export function finishClashes(finishes: readonly Finish[]): Warning[] {
  return [...sheetClashes(finishes), ...icingClashes(finishes), ...glazeClashes(finishes)];
}

function sheetClashes(finishes: readonly Finish[]): Warning[] {
  const sheets = orList(finishes.filter(({ use }) => use.rolled !== undefined).map(({ name }) => name));
  if (sheets === '') return [];
  return finishes.flatMap((inside): Warning[] => {
    if (inside.kind === 'cream') {
      const message = `${inside.name} never goes under ${sheets}: the cake would have to be chilled, where the sheet weeps, or kept warm, where the cream spoils. Use buttercream or ganache.`;
      return [{ code: 'cream-under-sheet', message }];
    }
    // Syrup keeps in the fridge but does not need it once it is in the cake.
    if (!inside.chilled || inside.kind === 'syrup' || inside.use.rolled !== undefined) return [];
    const message = `${inside.name} needs the fridge, where ${sheets} turns sticky: keep the cake dry in a closed box and serve it on the day.`;
    return [{ code: 'chilled-under-sheet', message }];
  });
}
