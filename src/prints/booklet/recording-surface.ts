/** A surface that draws nothing and remembers where things would stand: anchors, sections and the lowest ink. */
import type { PathStep, Surface } from '../sheet/surface.ts';

export interface PageRecord {
  anchors: string[];
  /** Keys of the sections that have something on the page, in order. */
  sections: string[];
  /** Lowest baseline or path point; 0 on an empty page. */
  lowestMm: number;
}

const yOf = (step: PathStep): number =>
  step.op === 'close' ? 0 : step.op === 'cubic' ? Math.max(step.y1, step.y2, step.y) : step.y;

/** What a drawing leaves on a page. */
export function recorded(draw: (surface: Surface) => void): PageRecord {
  const record: PageRecord = { anchors: [], sections: [], lowestMm: 0 };
  const reach = (yMm: number) => {
    record.lowestMm = Math.max(record.lowestMm, yMm);
  };
  draw({
    text: ({ yMm }) => reach(yMm),
    path: (steps) => {
      for (const step of steps) reach(yOf(step));
    },
    within(tag, { key }, body) {
      if (tag === 'Sect' && key !== undefined && !record.sections.includes(key)) record.sections.push(key);
      body();
    },
    artifact: (body) => body(),
    clip: (_box, body) => body(),
    link: (_box, _target, _description, body) => body(),
    anchor: (name) => record.anchors.push(name),
    bookmark: () => undefined,
  });
  return record;
}
