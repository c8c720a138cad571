/**
 * What somebody asked the planner, as text: in the page's address after the #, so that a plan can be sent in a
 * message, and opens the same on any device. Nothing here is checked against a kitchen; that is `question.ts`.
 */
export interface TinOnPlan {
  /** Id of a tin on the shelf, or a description: 'round 7in x 3in'. */
  tin: string;
  count: number;
}

export type AskKind = 'tins' | 'eggs' | 'portions';

export interface PlanState {
  recipeId: string;
  flavourIds: string[];
  tins: TinOnPlan[];
  /** As written: '60 mm'; empty for the recipe's own. */
  height: string;
  /** As written: 'UK large'; empty for the kitchen's. */
  egg: string;
  /** 'vanilla-buttercream--filling'. */
  finishes: string[];
  size: 'dessert' | 'finger';
  mass: 'g' | 'oz';
  /** Step of the scale, g; 0 for the kitchen's own. */
  step: number;
  ask: AskKind;
  eggs: number;
  portions: number;
}

export const EMPTY_PLAN: PlanState = {
  recipeId: '',
  flavourIds: [],
  tins: [],
  height: '',
  egg: '',
  finishes: [],
  size: 'dessert',
  mass: 'g',
  step: 0,
  ask: 'tins',
  eggs: 6,
  portions: 40,
};

const MOST_COUNT = 99;
const ITEM = /^(\d{1,3}) x (.+)$/;

/** The plan as it stands behind the # of the address; what is as usual is left out, the kitchen's unit of weight too. */
export function planText(state: PlanState, usualMass: PlanState['mass'] = EMPTY_PLAN.mass): string {
  const parts = new URLSearchParams();
  const put = (key: string, value: string, usual: string): void => {
    if (value !== usual) parts.set(key, value);
  };
  put('recipe', state.recipeId, '');
  put('flavours', state.flavourIds.join(','), '');
  put('tins', state.tins.map(({ tin, count }) => `${count} x ${tin}`).join(', '), '');
  put('height', state.height, '');
  put('eggs', state.egg, '');
  put('finishes', state.finishes.join(','), '');
  put('portion', state.size, EMPTY_PLAN.size);
  put('mass', state.mass, usualMass);
  put('step', String(state.step), String(EMPTY_PLAN.step));
  if (state.ask === 'eggs') put('ask', `${state.eggs} eggs`, '');
  if (state.ask === 'portions') put('ask', `${state.portions} portions`, '');
  return parts.toString();
}

const listOf = (text: string | null): string[] =>
  (text ?? '')
    .split(',')
    .map((one) => one.trim())
    .filter((one) => one !== '');

function tinsFrom(text: string | null): TinOnPlan[] {
  return listOf(text).flatMap((item) => {
    const [, count, tin] = ITEM.exec(item) ?? [];
    const number = Number(count);
    return tin === undefined || number < 1 ? [] : [{ tin, count: Math.min(MOST_COUNT, number) }];
  });
}

function askFrom(text: string | null): Partial<PlanState> {
  const [, count = '', what] = /^(\d{1,4}) (eggs|portions)$/.exec(text ?? '') ?? [];
  const number = Math.max(1, Number(count));
  if (what === 'eggs') return { ask: 'eggs', eggs: number };
  return what === 'portions' ? { ask: 'portions', portions: number } : {};
}

const massFrom = (text: string | null): PlanState['mass'] | null =>
  text === 'oz' || text === 'g' ? text : null;

/** The plan of an address; what cannot be read is as usual. `planFrom(planText(plan))` is the plan. */
export function planFrom(text: string, usualMass: PlanState['mass'] = EMPTY_PLAN.mass): PlanState {
  const parts = new URLSearchParams(text.replace(/^#/, ''));
  const step = Number(parts.get('step') ?? 0);
  return {
    ...EMPTY_PLAN,
    recipeId: parts.get('recipe') ?? '',
    flavourIds: listOf(parts.get('flavours')),
    tins: tinsFrom(parts.get('tins')),
    height: parts.get('height') ?? '',
    egg: parts.get('eggs') ?? '',
    finishes: listOf(parts.get('finishes')),
    size: parts.get('portion') === 'finger' ? 'finger' : 'dessert',
    mass: massFrom(parts.get('mass')) ?? usualMass,
    step: step > 0 && step <= 100 ? step : 0,
    ...askFrom(parts.get('ask')),
  };
}

/** One tin more or fewer; a tin that comes to none goes. */
export function withTin(state: PlanState, tin: string, count: number): PlanState {
  const number = Math.min(MOST_COUNT, count);
  const others = state.tins.filter((one) => one.tin !== tin);
  if (number < 1) return { ...state, tins: others };
  const at = state.tins.findIndex((one) => one.tin === tin);
  const tins = [...others];
  tins.splice(at === -1 ? others.length : at, 0, { tin, count: number });
  return { ...state, tins };
}

export const countOf = ({ tins }: PlanState, tin: string): number =>
  tins.find((one) => one.tin === tin)?.count ?? 0;
