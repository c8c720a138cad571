/**
 * A kitchen that handles an allergen cannot promise that a cake is free from it, so names here may not say so:
 * 'made without wheat ingredients' says what is true. Regulation (EU) 828/2014 keeps 'gluten-free' for food
 * measured at 20 mg/kg or less (from memory).
 */
import { error } from './problems.ts';
import { quote } from './quote.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

const CLAIM =
  /\bfree[\s-]+from\b|\b(?:gluten|wheat|dairy|milk|lactose|eggs?|nuts?|soya?|allergens?)[\s-]+free\b|\bvegan\b/i;

/** Reports a name or a summary that promises what nobody has measured. */
export function checkClaim(reader: YamlReader, ...path: YamlPath): void {
  const claim = CLAIM.exec(reader.text(...path) ?? '');
  if (claim === null) return;
  const hint = "Write what is true of any kitchen: 'Made without egg ingredients'.";
  const message = `${quote(claim[0])} promises more than a kitchen can know`;
  reader.report(error('claim-not-allowed', message, hint), ...path);
}
