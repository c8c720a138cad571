/**
 * Do these finishes go together on one cake? Fresh cream and curd need the fridge, and a rolled sheet draws
 * water there and weeps: common practice, no source; chilled food at 8 °C or below: Food Safety and Hygiene
 * (England) Regulations 2013, Schedule 4.
 */
import type { Finish } from '../../domain/finish.ts';
import type { Warning } from '../../domain/problem.ts';

/** Named warnings for finishes used together, whatever their order. `cream-under-sheet` must not be made. */
export function finishClashes(finishes: readonly Finish[]): Warning[] {
  const sheets = finishes.filter(({ use }) => use.rolled !== undefined);
  return sheets.flatMap((sheet) =>
    finishes.flatMap((inside): Warning[] => {
      if (inside.kind === 'cream') {
        const message = `${inside.name} never goes under ${sheet.name}: the cake would have to be chilled, where the sheet weeps, or kept warm, where the cream spoils. Use buttercream or ganache.`;
        return [{ code: 'cream-under-sheet', message }];
      }
      if (!inside.chilled || inside === sheet) return [];
      const message = `${inside.name} needs the fridge, where ${sheet.name} turns sticky: keep it dry in a closed box and serve it on the day.`;
      return [{ code: 'chilled-under-sheet', message }];
    }),
  );
}
