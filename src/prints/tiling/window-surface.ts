/** A surface that passes on only what shows in a window, so that a tile does not carry the whole sheet. */
import { shiftedSurface } from '../sheet/shifted-surface.ts';
import type { Box, Metrics, PathStep, Surface, TextRun } from '../sheet/surface.ts';

/** More than half of any line's weight on a sheet. */
const SLACK_MM = 2;

interface Reach {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

function reachOfPath(steps: PathStep[]): Reach {
  const reach: Reach = {
    left: Number.POSITIVE_INFINITY,
    right: Number.NEGATIVE_INFINITY,
    top: Number.POSITIVE_INFINITY,
    bottom: Number.NEGATIVE_INFINITY,
  };
  const add = (x: number, y: number): void => {
    reach.left = Math.min(reach.left, x);
    reach.right = Math.max(reach.right, x);
    reach.top = Math.min(reach.top, y);
    reach.bottom = Math.max(reach.bottom, y);
  };
  for (const step of steps) {
    if (step.op === 'close') continue;
    add(step.x, step.y);
    if (step.op !== 'cubic') continue;
    add(step.x1, step.y1);
    add(step.x2, step.y2);
  }
  return reach;
}

/** Of level text; turned text is taken to reach as far in every direction. */
function reachOfText(run: TextRun, metrics: Metrics): Reach {
  const { xMm, yMm, font, sizePt } = run;
  const widthMm = metrics.widthMm(run.text, font, sizePt, run.tabular);
  if (run.turnDeg)
    return { left: xMm - widthMm, right: xMm + widthMm, top: yMm - widthMm, bottom: yMm + widthMm };
  const top = yMm - metrics.ascentMm(font, sizePt);
  return { left: xMm, right: xMm + widthMm, top, bottom: yMm + metrics.descentMm(font, sizePt) };
}

/** All places are the sheet's; they land so that the window's corner lies at (x, y), cut off at its edges. */
export function inWindow(
  surface: Surface,
  window: Box,
  at: { xMm: number; yMm: number },
  metrics: Metrics,
  body: (sheet: Surface) => void,
): void {
  const shows = ({ left, right, top, bottom }: Reach): boolean =>
    right >= window.xMm - SLACK_MM &&
    left <= window.xMm + window.widthMm + SLACK_MM &&
    bottom >= window.yMm - SLACK_MM &&
    top <= window.yMm + window.heightMm + SLACK_MM;
  const moved = shiftedSurface(surface, { xMm: at.xMm - window.xMm, yMm: at.yMm - window.yMm });
  const culled: Surface = {
    ...moved,
    text: (run) => {
      if (shows(reachOfText(run, metrics))) moved.text(run);
    },
    path: (steps, paint) => {
      if (shows(reachOfPath(steps))) moved.path(steps, paint);
    },
  };
  moved.clip(window, () => body(culled));
}
