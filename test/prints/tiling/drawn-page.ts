/** A page's operators as places in mm: what is drawn inside its clipping window, and the crosses drawn over it. */
export interface Spot {
  x: number;
  y: number;
}

export interface DrawnPage {
  /** All points of each path, in order, as far as it was drawn under the clip (or anywhere, without one). */
  inside: Spot[][];
  clip: { x: number; y: number; width: number; height: number };
  /** Middles of the crosses: two lines of 6 mm that cross in their middles. */
  crosses: Spot[];
}

const MM_PER_PT = 25.4 / 72;
const CROSS_MM = 6;

function points(line: string): Spot[] {
  const numbers = line
    .split(' ')
    .slice(0, -1)
    .map((part) => Number(part) * MM_PER_PT);
  return Array.from({ length: numbers.length / 2 }, (_, index) => ({
    x: numbers[2 * index] ?? Number.NaN,
    y: numbers[2 * index + 1] ?? Number.NaN,
  }));
}

interface Lines {
  level: Spot[];
  upright: Spot[];
}

/** Middles of lines of the length of a cross. */
function crossLines(path: { op: string; at: Spot[] }[]): Lines {
  const lines: Lines = { level: [], upright: [] };
  for (const [index, { op, at }] of path.entries()) {
    const from = path[index - 1]?.at.at(-1);
    const to = at[0];
    if (op !== 'l' || path[index - 1]?.op !== 'm' || !from || !to) continue;
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    const [dx, dy] = [Math.abs(to.x - from.x), Math.abs(to.y - from.y)];
    if (dy < 0.01 && Math.abs(dx - CROSS_MM) < 0.01) lines.level.push(middle);
    if (dx < 0.01 && Math.abs(dy - CROSS_MM) < 0.01) lines.upright.push(middle);
  }
  return lines;
}

/** Reads the operators that this project writes, one a line, y down. */
export function drawnPage(content: string): DrawnPage {
  const page: DrawnPage = { inside: [], clip: { x: 0, y: 0, width: 0, height: 0 }, crosses: [] };
  const hasClip = / re W n$/m.test(content);
  let depth = 0;
  let clipDepth = hasClip ? Number.POSITIVE_INFINITY : 0;
  let path: { op: string; at: Spot[] }[] = [];
  for (const line of content.split('\n')) {
    const op = line.slice(line.lastIndexOf(' ') + 1);
    if (line === 'q') depth += 1;
    else if (line === 'Q') {
      depth -= 1;
      if (depth < clipDepth) clipDepth = hasClip ? Number.POSITIVE_INFINITY : 0;
    } else if (line.endsWith(' re W n')) {
      const [x = 0, y = 0, width = 0, height = 0] = line.split(' ').map((part) => Number(part) * MM_PER_PT);
      page.clip = { x, y, width, height };
      clipDepth = depth;
    } else if (op === 'm' || op === 'l' || op === 'c') path.push({ op, at: points(line) });
    else if (/^(f\*?|S|B\*?)$/.test(line)) {
      if (depth >= clipDepth) page.inside.push(path.flatMap(({ at }) => at));
      else {
        const { level, upright } = crossLines(path);
        page.crosses.push(
          ...level.filter((a) => upright.some((b) => Math.hypot(a.x - b.x, a.y - b.y) < 0.01)),
        );
      }
      path = [];
    }
  }
  return page;
}
