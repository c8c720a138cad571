/** What every part of the planner is given. */

import type { PlannerContent } from '../../views/planner-content.ts';
import type { PlannerWords } from '../../wording/planner/index.ts';
import type { PlanState } from '../plan-state.ts';

export interface PartProps {
  state: PlanState;
  change(next: PlanState): void;
  /** The kitchen as it is on this device. */
  content: PlannerContent;
  words: PlannerWords;
}
