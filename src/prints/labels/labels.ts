/** The fixed words of sheets, from the wording room. */
export { labelsFor } from '../../wording/sheets/index.ts';
