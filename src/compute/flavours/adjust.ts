/**
 * One adjustment on one formula. Lines keep their order; a new line joins after the last line of its role, so
 * that the card still reads in the order of the bowl. A line already there takes the weight instead.
 */
import type { Adjustment, FormulaEntry } from '../../domain/flavour.ts';
import type { Formula } from '../../domain/recipe.ts';
import { basisG, countsTowards } from './basis.ts';

function withAdded(formula: Formula, entry: FormulaEntry, grams: number): Formula {
  if (grams === 0) return formula;
  const there = formula.findIndex((line) => line.ingredientId === entry.ingredientId);
  if (there >= 0) {
    return formula.map((line, at) => (at === there ? { ...line, grams: line.grams + grams } : line));
  }
  const lastOfRole = formula.findLastIndex((line) => line.role === entry.role);
  const at = lastOfRole < 0 ? formula.length : lastOfRole + 1;
  return [...formula.slice(0, at), { ...entry, grams }, ...formula.slice(at)];
}

function withoutEmpty(formula: Formula): Formula {
  return formula.filter((line) => line.grams > 0);
}

function replaced(formula: Formula, adjustment: Adjustment & { kind: 'replace' }): Formula {
  const takenG = basisG(formula, adjustment.basis) * adjustment.share;
  const thinned = formula.map((line) =>
    countsTowards(line, adjustment.basis) ? { ...line, grams: line.grams * (1 - adjustment.share) } : line,
  );
  return withoutEmpty(withAdded(thinned, adjustment.entry, takenG * adjustment.portion));
}

function split(formula: Formula, adjustment: Adjustment & { kind: 'split-self-raising' }): Formula {
  const selfRaisingG = basisG(formula, { ingredientId: adjustment.ingredientId });
  if (selfRaisingG === 0) return formula;
  // 105 g of self-raising flour is 100 g of plain and 5 g of powder when the share is 5 % of the plain flour.
  const plainG = selfRaisingG / (1 + adjustment.powderShare);
  const rest = formula.map((line) =>
    line.ingredientId === adjustment.ingredientId ? { ...line, ...adjustment.flour, grams: plainG } : line,
  );
  return withAdded(rest, adjustment.powder, selfRaisingG - plainG);
}

/** The formula after one adjustment; weights in g, not yet brought back to any total. */
export function adjusted(formula: Formula, adjustment: Adjustment): Formula {
  switch (adjustment.kind) {
    case 'replace':
      return replaced(formula, adjustment);
    case 'add':
      return withAdded(formula, adjustment.entry, basisG(formula, adjustment.basis) * adjustment.share);
    case 'multiply':
      return withoutEmpty(
        formula.map((line) =>
          countsTowards(line, adjustment.basis) ? { ...line, grams: line.grams * adjustment.by } : line,
        ),
      );
    case 'split-self-raising':
      return split(formula, adjustment);
  }
}
