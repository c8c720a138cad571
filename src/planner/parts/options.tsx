/** Height, eggs, scale, units, size of portions, and what goes between and around. */

import { finishesInOrder, finishingColumns } from '../../views/finishing-columns.ts';
import { inHomeUnits } from '../../views/home-units.ts';
import { finishingWordsFor } from '../../wording/finishing/index.ts';
import { formatBothLengths } from '../../wording/length.ts';
import { formatGrams } from '../../wording/mass.ts';
import { portionsWordsFor } from '../../wording/portions/index.ts';
import { uncapitalised } from '../../wording/sentence-case.ts';
import { recipeOf } from '../question.ts';
import type { PartProps } from './part-props.ts';

const EGG_SIZES = [
  'UK small',
  'UK medium',
  'UK large',
  'UK extra large',
  'US medium',
  'US large',
  'US extra large',
  'US jumbo',
];
const STEPS = [1, 2, 5, 10];

function Finishes({ state, change, content, words }: PartProps) {
  const { locale } = content.kitchen;
  const columns = finishingColumns(
    finishesInOrder(content.finishes),
    content.finishing,
    finishingWordsFor(locale),
  );
  const chosen = columns.filter(({ use }) => use !== 'dam');
  if (chosen.length === 0) return null;
  const toggled = (id: string): string[] =>
    state.finishes.includes(id) ? state.finishes.filter((one) => one !== id) : [...state.finishes, id];
  return (
    <details open={state.finishes.length > 0}>
      <summary>
        {words.options.finishes}
        {state.finishes.length > 0 && ` (${state.finishes.length})`}
      </summary>
      <p>{words.options.finishesLead}</p>
      <ul class="chips">
        {chosen.map(({ id, finish, useText }) => (
          <li key={id}>
            <label>
              <input
                type="checkbox"
                checked={state.finishes.includes(id)}
                onChange={() => change({ ...state, finishes: toggled(id) })}
              />
              {finish.name}: {inHomeUnits(uncapitalised(useText), content.kitchen)}
            </label>
          </li>
        ))}
      </ul>
    </details>
  );
}

export function Options(props: PartProps) {
  const { state, change, content, words } = props;
  const { options } = words;
  const { kitchen } = content;
  const home = (text: string): string => inHomeUnits(text, kitchen);
  const usualHeight = home(formatBothLengths(recipeOf(state, content)?.finishedHeightMm ?? 0, 'mm'));
  const { size } = kitchen.egg;
  const usualEgg =
    size === null ? home(`${formatGrams(kitchen.egg.shelledG)} g`) : `${size.scheme} ${size.grade}`;
  const sizes = portionsWordsFor(kitchen.locale).sizeNames;
  return (
    <section class="options">
      <details>
        <summary>{options.heading}</summary>
        <div class="fields">
          <label>
            {options.height}
            <input
              autocomplete="off"
              placeholder={options.heightHint(usualHeight)}
              value={state.height}
              onInput={(event) => change({ ...state, height: event.currentTarget.value })}
            />
          </label>
          <label>
            {options.egg}
            <select
              value={state.egg}
              onChange={(event) => change({ ...state, egg: event.currentTarget.value })}
            >
              <option value="">{options.eggUsual(usualEgg)}</option>
              {EGG_SIZES.map((name) => (
                <option key={name} value={name}>
                  {name}
                </option>
              ))}
            </select>
          </label>
          <label>
            {options.step}
            <select
              value={String(state.step)}
              onChange={(event) => change({ ...state, step: Number(event.currentTarget.value) })}
            >
              <option value="0">{home(options.stepUsual(formatGrams(kitchen.scale.stepG)))}</option>
              {STEPS.map((step) => (
                <option key={step} value={String(step)}>
                  {home(options.stepOf(String(step)))}
                </option>
              ))}
            </select>
          </label>
          <label>
            {options.mass}
            <select
              value={state.mass}
              onChange={(event) =>
                change({ ...state, mass: event.currentTarget.value === 'oz' ? 'oz' : 'g' })
              }
            >
              <option value="g">{options.grams}</option>
              <option value="oz">{options.ounces}</option>
            </select>
          </label>
          <label>
            {options.portion}
            <select
              value={state.size}
              onChange={(event) =>
                change({ ...state, size: event.currentTarget.value === 'finger' ? 'finger' : 'dessert' })
              }
            >
              <option value="dessert">{sizes.dessert}</option>
              <option value="finger">{sizes.finger}</option>
            </select>
          </label>
        </div>
      </details>
      <Finishes {...props} />
    </section>
  );
}
