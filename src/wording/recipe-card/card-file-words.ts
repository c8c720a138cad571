/** How the site names files of recipe cards. */

/** By the ending of their names. */
export const CARD_FILE_SIZES: Readonly<Record<string, string>> = {
  a6: 'A6',
  a5: 'A5',
  '3x5in': '3 × 5 in',
  '4x6in': '4 × 6 in',
  '5x8in': '5 × 8 in',
};

export const CARD_FILE_WORDS = {
  several: 'All cards, several to a sheet',
  one: (size: string): string => `PDF, ${size}`,
  toCut: (size: string, paper: string): string => `PDF, ${size} to cut from ${paper}`,
  about:
    'Cards for the tin drawer, each recipe with its flavours: fronts and backs in turn, to print on both sides at 100 %.',
} as const;
