/** What the rest of the house may use of the oven. */
export {
  fillShelves,
  type OvenMemory,
  ovenMemory,
  standingRoom,
} from './fill-shelves.ts';
export { type Footprint, tinFootprint, turnedFootprint } from './footprint.ts';
export { groupBatches } from './group-batches.ts';
export {
  footprintsOf,
  goTogether,
  mixingOrder,
  type OvenBatch,
  type OvenRules,
  type OvenTin,
} from './load-rules.ts';
export { type Place, placeTins } from './place-tins.ts';
export type { ShelfRoom } from './shelf.ts';
