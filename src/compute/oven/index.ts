/** What the rest of the house may use of the oven. */
export {
  fillShelves,
  mightFillShelves,
  type OvenMemory,
  type OvenPlace,
  ovenMemory,
  standingRoom,
} from './fill-shelves.ts';
export { type Footprint, tinFootprint, turnedFootprint } from './footprint.ts';
export { type Grouping, groupBatches } from './group-batches.ts';
export {
  footprintsOf,
  goTogether,
  mixingOrder,
  type OvenBatch,
  type OvenRules,
  type OvenTin,
} from './load-rules.ts';
export { type Place, placeTins, type ShelfAnswer } from './place-tins.ts';
export { areaFits, pairFits, reachOf, type ShelfRoom } from './shelf.ts';
