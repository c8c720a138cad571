/** What the rest of the house may use of lining papers. */
export { type LiningPiece, type LiningSettings, liningPieces } from './lining-pieces.ts';
