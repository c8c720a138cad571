/** The same surface seen from another origin, so that a page can be drawn anywhere: several up, imposed, tiled. */
import type { Box, Origin, PathStep, Surface } from './surface.ts';

function shiftedStep(step: PathStep, { xMm, yMm }: Origin): PathStep {
  switch (step.op) {
    case 'close':
      return step;
    case 'cubic':
      return {
        op: 'cubic',
        x1: step.x1 + xMm,
        y1: step.y1 + yMm,
        x2: step.x2 + xMm,
        y2: step.y2 + yMm,
        x: step.x + xMm,
        y: step.y + yMm,
      };
    default:
      return { op: step.op, x: step.x + xMm, y: step.y + yMm };
  }
}

/** All places are counted from `origin`. */
export function shiftedSurface(surface: Surface, origin: Origin): Surface {
  if (origin.xMm === 0 && origin.yMm === 0) return surface;
  const point = (at: Origin): Origin => ({ xMm: at.xMm + origin.xMm, yMm: at.yMm + origin.yMm });
  const moved = (box: Box): Box => ({ ...box, ...point(box) });
  return {
    text: (run) => surface.text({ ...run, ...point(run) }),
    path: (steps, paint) =>
      surface.path(
        steps.map((step) => shiftedStep(step, origin)),
        paint,
      ),
    within: (tag, options, body) =>
      surface.within(tag, options.box ? { ...options, box: moved(options.box) } : options, body),
    artifact: (body) => surface.artifact(body),
    clip: (box, body) => surface.clip(moved(box), body),
    link: (box, target, description, body) => surface.link(moved(box), target, description, body),
    anchor: (name, at) => surface.anchor(name, point(at)),
    bookmark: (title, level, at) => surface.bookmark(title, level, point(at)),
  };
}
