/** One point is 1/72 in, one inch 25.4 mm (exact). */
export const MM_PER_PT = 25.4 / 72;
