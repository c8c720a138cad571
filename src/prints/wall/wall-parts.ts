/** A body too long for one sheet, cut into parts of like length: at the row where a new group begins, if it has one. */
import type { WallPlate, WallTable } from '../../views/wall.types.ts';

type Body = WallTable | WallPlate;

function cut<T>(items: readonly T[], parts: number): T[][] {
  const each = Math.ceil(items.length / parts);
  return Array.from({ length: Math.ceil(items.length / each) }, (_, part) =>
    items.slice(part * each, (part + 1) * each),
  );
}

function tableParts(table: WallTable, parts: number): WallTable[] {
  const at = table.rows.findIndex(({ id }) => id === table.secondGroupAt);
  const rows =
    parts === 2 && at > 0 ? [table.rows.slice(0, at), table.rows.slice(at)] : cut(table.rows, parts);
  return rows.map((some) => ({ ...table, rows: some }));
}

/** `parts` bodies, or fewer where there is not enough to share out. */
export function wallParts(body: Body, parts: number): Body[] {
  if (parts === 1) return [body];
  if (body.form === 'table') return tableParts(body, parts);
  return cut(body.tins, parts).map((tins) => ({ ...body, tins }));
}

/** How many there are to share out. */
export const itemCount = (body: Body): number =>
  body.form === 'table' ? body.rows.length : body.tins.length;
