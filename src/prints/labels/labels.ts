/** The fixed words of sheets, from the wording room. */
export { labelsFor, type PrintLabels } from '../../wording/sheets/index.ts';
