/** Which recipe, which flavours, and what is known: tins, eggs or guests. */
import type { AskKind } from '../plan-state.ts';
import { recipeOf } from '../question.ts';
import type { PartProps } from './part-props.ts';

const ASKS: readonly AskKind[] = ['tins', 'eggs', 'portions'];
const MOST = { eggs: 99, portions: 999 };

function Flavours({ state, change, content, words }: PartProps) {
  const recipe = recipeOf(state, content);
  const suiting = content.flavours.filter(
    ({ suits }) =>
      recipe !== null && (suits.recipeIds.includes(recipe.id) || suits.methods.includes(recipe.method)),
  );
  const toggled = (id: string): string[] =>
    state.flavourIds.includes(id) ? state.flavourIds.filter((one) => one !== id) : [...state.flavourIds, id];
  return (
    <details class="flavours" open={state.flavourIds.length > 0}>
      <summary>
        {words.flavours}
        {state.flavourIds.length > 0 && ` (${state.flavourIds.length})`}
      </summary>
      {suiting.length === 0 && <p>{words.noFlavours}</p>}
      <ul class="chips">
        {suiting.map(({ id, name }) => (
          <li key={id}>
            <label>
              <input
                type="checkbox"
                checked={state.flavourIds.includes(id)}
                onChange={() => change({ ...state, flavourIds: toggled(id) })}
              />
              {name}
            </label>
          </li>
        ))}
      </ul>
    </details>
  );
}

function Asked({ state, change, words }: PartProps) {
  if (state.ask === 'tins') return null;
  const [label, value, most] =
    state.ask === 'eggs'
      ? [words.eggsAsked, state.eggs, MOST.eggs]
      : [words.portionsAsked, state.portions, MOST.portions];
  const set = (text: string): void => {
    const number = Math.min(most, Math.max(1, Math.round(Number(text) || 1)));
    change(state.ask === 'eggs' ? { ...state, eggs: number } : { ...state, portions: number });
  };
  return (
    <label class="asked">
      {label}
      <input
        type="number"
        min="1"
        max={most}
        inputmode="numeric"
        value={value}
        onInput={(event) => set(event.currentTarget.value)}
      />
    </label>
  );
}

export function RecipeChoice(props: PartProps) {
  const { state, change, content, words } = props;
  return (
    <section class="question">
      <label class="recipe">
        {words.recipe}
        <select
          value={recipeOf(state, content)?.id ?? ''}
          onChange={(event) =>
            change({ ...state, recipeId: event.currentTarget.value, flavourIds: [], height: '' })
          }
        >
          {content.recipes.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <Flavours {...props} />
      <fieldset class="asks">
        <legend>{words.ask.legend}</legend>
        {ASKS.map((ask) => (
          <label key={ask}>
            <input
              type="radio"
              name="ask"
              checked={state.ask === ask}
              onChange={() => change({ ...state, ask })}
            />
            {words.ask[ask]}
          </label>
        ))}
      </fieldset>
      <Asked {...props} />
    </section>
  );
}
