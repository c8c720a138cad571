/** Puts the planner into its page. The content comes from a script beside this one, so that it works from disk. */
import { render } from 'preact';
import { usualMass } from '../views/home-units.ts';
import type { PlannerContent } from '../views/planner-content.ts';
import { planAnswer } from './answer.ts';
import { planFrom } from './plan-state.ts';
import { PlannerApp } from './planner-app.tsx';

declare global {
  interface Window {
    tinwrightContent?: PlannerContent;
    /** The bundled computation itself, for whoever wants to check it: the answer to an address, as `mix --json` has it. */
    tinwrightPlan?(address: string): unknown;
  }
}

const place = document.getElementById('planner');
const published = window.tinwrightContent;
if (place !== null && published !== undefined) {
  window.tinwrightPlan = (address) => {
    const answer = planAnswer(planFrom(address, usualMass(published.kitchen)), published);
    return answer?.ok ? answer.value.json() : answer;
  };
  place.replaceChildren();
  render(<PlannerApp published={published} />, place);
}
