/**
 * A kitchen that handles an allergen cannot promise that a cake is free from it: 'made without wheat ingredients'
 * says what is true. Regulation (EU) 828/2014 keeps 'gluten-free' for food measured at 20 mg/kg or less (from
 * memory).
 */
const CLAIM =
  /\bfree[\s-]+from\b|\b(?:gluten|wheat|dairy|milk|lactose|eggs?|nuts?|soya?|allergens?)[\s-]+free\b|\bvegan\b/i;

/** The words of a text that promise what nobody has measured; null when there are none. */
export const claimIn = (text: string): string | null => CLAIM.exec(text)?.[0] ?? null;
