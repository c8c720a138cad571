/**
 * The plans of the fifteen tins once more, in inches, as plain questions 'is this point inside?', written from
 * the definitions of the shapes and not from the project's formulas. Areas come from slicing them.
 */
export type Inside = (x: number, y: number) => boolean;

const disc =
  (r: number, cx = 0, cy = 0): Inside =>
  (x, y) =>
    (x - cx) ** 2 + (y - cy) ** 2 <= r * r;

const box =
  (length: number, width: number): Inside =>
  (x, y) =>
    Math.abs(x) <= length / 2 && Math.abs(y) <= width / 2;

/** Regular polygon by its half planes. */
function polygon(sides: number, apothem: number): Inside {
  const outward = Array.from({ length: sides }, (_, k) => {
    const a = (2 * Math.PI * k) / sides;
    return [Math.cos(a), Math.sin(a)] as const;
  });
  return (x, y) => outward.every(([across, up]) => x * across + y * up <= apothem);
}

function ring(outer: number, tube: number): Inside {
  const [whole, hole] = [disc(outer), disc(tube)];
  return (x, y) => whole(x, y) && !hole(x, y);
}

/** A box under four lines at 45°, each as far in as makes the wall across its corner this long. */
function longOctagon(length: number, width: number, slant: number): Inside {
  const whole = box(length, width);
  // From the corner of the box to the middle of the slant is half the slant; along x + y that is √2 times as much.
  const reach = length / 2 + width / 2 - (slant / 2) * Math.SQRT2;
  return (x, y) => whole(x, y) && Math.abs(x) + Math.abs(y) <= reach;
}

/** Square of side s on its point at the origin, discs on the middles of its upper sides. */
function heart(s: number): Inside {
  const q = s / (2 * Math.SQRT2);
  const left = disc(s / 2, -q, 3 * q);
  const right = disc(s / 2, q, 3 * q);
  return (x, y) => Math.abs(x) + Math.abs(y - 2 * q) <= 2 * q || left(x, y) || right(x, y);
}

/** Discs of the side's width on the sides of a regular polygon whose outermost points lie on a circle. */
function petal(n: number, across: number): Inside {
  // The side is found by trial, not by formula: apothem + half the side must reach the circle.
  let low = 0;
  let high = across;
  for (let k = 0; k < 80; k += 1) {
    const side = (low + high) / 2;
    if (side / 2 / Math.tan(Math.PI / n) + side / 2 < across / 2) low = side;
    else high = side;
  }
  const apothem = low / 2 / Math.tan(Math.PI / n);
  const middle = polygon(n, apothem);
  const discs = Array.from({ length: n }, (_, k) => (2 * Math.PI * k) / n).map((a) =>
    disc(low / 2, apothem * Math.cos(a), apothem * Math.sin(a)),
  );
  return (x, y) => middle(x, y) || discs.some((inside) => inside(x, y));
}

const HEART_UNIT_WIDTH = 1 / (1 + 1 / Math.SQRT2);
const HEART_UNIT_HEIGHT = 1 / (3 / (2 * Math.SQRT2) + 1 / 2);

export const INSIDE: Record<string, Inside> = {
  round: disc(4),
  square: box(8, 8),
  rectangle: box(13, 9),
  hexagon_across_flats: polygon(6, 4),
  octagon_across_flats: polygon(8, 4),
  long_octagon: longOctagon(12, 9, 3),
  oval_ellipse: (x, y) => (x / 5.375) ** 2 + (y / 3.9375) ** 2 <= 1,
  heart_width_across_lobes: heart(8 * HEART_UNIT_WIDTH),
  heart_height_point_to_lobe_top: heart(8 * HEART_UNIT_HEIGHT),
  petal_8: petal(8, 9),
  tapered_round_frustum: disc(4),
  hemisphere: disc(3),
  spherical_cap: disc(4),
  ring_tin_straight: ring(5, 1.5),
  ring_tin_tapered: ring(5, 1),
};

/** Where a row of the plan changes between inside and outside, by bisection between 300 looks. */
function rowLength(inside: Inside, y: number, reach: number): number {
  const looks = 300;
  let length = 0;
  let last = inside(-reach, y);
  for (let k = 0; k < looks; k += 1) {
    const from = -reach + (2 * reach * k) / looks;
    const to = -reach + (2 * reach * (k + 1)) / looks;
    const first = last;
    last = inside(to, y);
    if (first === last) {
      if (first) length += to - from;
      continue;
    }
    let low = from;
    let high = to;
    for (let halving = 0; halving < 30; halving += 1) {
      const middle = (low + high) / 2;
      if (inside(middle, y) === first) low = middle;
      else high = middle;
    }
    length += first ? low - from : to - low;
  }
  return length;
}

/** Area by slicing into rows (midpoint rule). */
export function slicedArea(inside: Inside, reach = 10, rows = 3000): number {
  const step = (2 * reach) / rows;
  let area = 0;
  for (let k = 0; k < rows; k += 1) area += rowLength(inside, -reach + (k + 0.5) * step, reach) * step;
  return area;
}

/** Volume by stacking thin slices of known area (midpoint rule). */
export function stackedVolume(areaAt: (z: number) => number, depth: number, slices = 20000): number {
  let volume = 0;
  for (let k = 0; k < slices; k += 1) volume += areaAt(((k + 0.5) * depth) / slices) * (depth / slices);
  return volume;
}
