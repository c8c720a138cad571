/** Names of places in the booklet: what the contents, the index and links lead to. Each stands once. */
export const recipeAnchor = (chartId: string): string => `recipe-${chartId}`;
export const formulaAnchor = (recipeId: string, ingredientId: string): string =>
  `recipe-${recipeId}-has-${ingredientId}`;
export const weightsAnchor = (chartId: string, rowId: string): string => `weights-${chartId}-in-${rowId}`;
export const bakeAnchor = (chartId: string, tinId: string): string => `oven-${chartId}-for-${tinId}`;
export const flavourAnchor = (flavourId: string): string => `flavour-${flavourId}`;
export const flavourLineAnchor = (flavourId: string, recipeId: string, ingredientId: string): string =>
  `flavour-${flavourId}-in-${recipeId}-has-${ingredientId}`;
export const finishAnchor = (finishId: string): string => `finish-${finishId}`;
export const tableRowAnchor = (tableId: string, rowId: string): string => `table-${tableId}-row-${rowId}`;
export const tinAnchor = (tinId: string): string => `tin-${tinId}`;
