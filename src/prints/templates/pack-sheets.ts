/**
 * Which parts share a sheet? Tallest first on shelves: each part on the first shelf with room, else on a new
 * shelf, else on a new sheet. Not always the fewest sheets, but close for the few parts of one tin.
 */
export interface Packable {
  widthMm: number;
  heightMm: number;
}

export interface Placed<T> {
  item: T;
  xMm: number;
  yMm: number;
}

interface Shelf<T> {
  yMm: number;
  heightMm: number;
  usedMm: number;
  items: Placed<T>[];
}

export const PART_GAP_MM = 4;
/** A part's window reaches a little over its lines. */
const SLACK_MM = 0.11;

interface Room {
  widthMm: number;
  heightMm: number;
}

function shelfOn<T extends Packable>(sheet: Shelf<T>[], item: T, room: Room): Shelf<T> | null {
  const open = sheet.find(
    (shelf) =>
      item.heightMm <= shelf.heightMm + SLACK_MM && shelf.usedMm + item.widthMm <= room.widthMm + SLACK_MM,
  );
  if (open !== undefined) return open;
  const last = sheet.at(-1);
  const yMm = last === undefined ? 0 : last.yMm + last.heightMm + PART_GAP_MM;
  if (yMm + item.heightMm > room.heightMm + SLACK_MM) return null;
  const shelf = { yMm, heightMm: item.heightMm, usedMm: 0, items: [] };
  sheet.push(shelf);
  return shelf;
}

/** Shelves stand in the middle of the sheet. */
function spread<T>(sheet: Shelf<T>[], room: Room): Placed<T>[] {
  return sheet.flatMap(({ items, usedMm }) => {
    const shift = (room.widthMm - (usedMm - PART_GAP_MM)) / 2;
    return items.map((placed) => ({ ...placed, xMm: placed.xMm + shift }));
  });
}

/** Items on sheets, each within the room; an item larger than the room is a bug and throws. */
export function packSheets<T extends Packable>(items: readonly T[], room: Room): Placed<T>[][] {
  const sheets: Shelf<T>[][] = [];
  const order = items.map((item, index) => ({ item, index }));
  order.sort((a, b) => b.item.heightMm - a.item.heightMm || a.index - b.index);
  for (const { item } of order) {
    if (item.widthMm > room.widthMm + SLACK_MM || item.heightMm > room.heightMm + SLACK_MM)
      throw new Error(`a part of ${item.widthMm} × ${item.heightMm} mm is larger than the sheet`);
    let shelf: Shelf<T> | null = null;
    for (const sheet of sheets) {
      shelf = shelfOn(sheet, item, room);
      if (shelf !== null) break;
    }
    if (shelf === null) {
      shelf = { yMm: 0, heightMm: item.heightMm, usedMm: 0, items: [] };
      sheets.push([shelf]);
    }
    shelf.items.push({ item, xMm: shelf.usedMm, yMm: shelf.yMm });
    shelf.usedMm += item.widthMm + PART_GAP_MM;
  }
  return sheets.map((sheet) => spread(sheet, room));
}
