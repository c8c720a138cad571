/** What the planner knows of a kitchen: everything that its computations need, as plain data written by the build. */
import type { Content } from '../domain/content.ts';

export type PlannerContent = Pick<
  Content,
  | 'kitchen'
  | 'ingredients'
  | 'outlines'
  | 'recipes'
  | 'flavours'
  | 'finishes'
  | 'finishing'
  | 'altitudeM'
  | 'portionSizes'
  | 'bakeLog'
>;

const KEYS = [
  'kitchen',
  'ingredients',
  'outlines',
  'recipes',
  'flavours',
  'finishes',
  'finishing',
  'altitudeM',
  'portionSizes',
  'bakeLog',
] as const satisfies readonly (keyof PlannerContent)[];

/** The planner's part of a kitchen's content; orders, stock and costs stay at home. */
export function plannerContent(content: Content): PlannerContent {
  return Object.fromEntries(KEYS.map((key) => [key, content[key]])) as unknown as PlannerContent;
}
