/** What the rest of the house may use of outlines. */
export { outlineAreaMm2 } from './area.ts';
export { outlineBounds } from './bounds.ts';
export { outlineCrossesItself } from './crossing.ts';
export { flattenOutline } from './flatten.ts';
export { ringDepths } from './nesting.ts';
export { type OutlineStep, outlinePath, outlineSvgPath } from './path.ts';
export { outlinePerimeterMm } from './perimeter.ts';
export { settleOutline } from './settle.ts';
export { centreOutline, transformOutline } from './transform.ts';
