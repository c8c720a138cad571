/** My prices: packs of what the plan takes, typed here or from an ingredients.yaml; kept on the device only. */
import { useState } from 'preact/hooks';
import type { Ingredient } from '../../domain/ingredient.ts';
import type { Problem } from '../../domain/problem.ts';
import { type planAnswer, told } from '../answer.ts';
import { loadScript } from '../load-script.ts';
import type { OwnKitchen } from '../own-kitchen.ts';
import { packsText } from '../own-prices.ts';
import { recipeOf } from '../question.ts';
import type { PartProps } from './part-props.ts';

export interface OwnPricesProps extends PartProps {
  own: OwnKitchen;
  changeOwn(next: OwnKitchen): void;
  answer: ReturnType<typeof planAnswer>;
  /** What is wrong with the prices as they stand. */
  problems: Problem[];
}

/** What goes into the plan, or into the recipe while there is none; yolks and whites come out of whole eggs. */
function calledFor({ state, content, answer }: OwnPricesProps): Ingredient[] {
  const finishIds = state.finishes.map((text) => text.slice(0, text.lastIndexOf('--')));
  const batter = answer?.ok ? answer.value.worked.mix.lines : (recipeOf(state, content)?.formula ?? []);
  const finishes = content.finishes.filter(({ id }) => finishIds.includes(id)).flatMap(({ parts }) => parts);
  const ids = new Set([...batter, ...finishes].map(({ ingredientId }) => ingredientId));
  const called = content.ingredients.filter(({ id }) => ids.has(id));
  const hasEggs = called.some(({ eggPart }) => eggPart !== undefined);
  return content.ingredients.filter(({ id, eggPart }) =>
    eggPart === undefined ? ids.has(id) : hasEggs && eggPart === 'egg',
  );
}

export function OwnPrices(props: OwnPricesProps) {
  const { own, changeOwn, problems, content, words } = props;
  const { cost } = words;
  const [wrong, setWrong] = useState<string[]>([]);
  const setPrice = (id: string, text: string): void =>
    changeOwn({ ...own, prices: { ...own.prices, [id]: text } });
  const open = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    try {
      if (window.tinwrightReadPrices === undefined) await loadScript('script/kitchen.js');
      const read = window.tinwrightReadPrices?.(await file.text(), content.currency);
      if (read === undefined) return;
      setWrong(told(read.problems));
      changeOwn({ ...own, prices: { ...own.prices, ...read.prices } });
    } catch {
      setWrong([words.print.failed]);
    }
  };
  return (
    <details class="prices">
      <summary>{cost.prices}</summary>
      <p>{cost.pricesLead}</p>
      <div class="fields">
        {calledFor(props).map(({ id, name, eggPart, packs }) => (
          <label key={id}>
            {name}
            <input
              autocomplete="off"
              placeholder={eggPart === 'egg' ? cost.eggExample : cost.example}
              value={own.prices[id] ?? packsText(packs ?? [], content.currency)}
              onInput={(event) => setPrice(id, event.currentTarget.value)}
            />
          </label>
        ))}
      </div>
      <div role="status">
        {[...told(problems), ...wrong].map((text) => (
          <p class="wrong" key={text}>
            {text}
          </p>
        ))}
      </div>
      <div class="fields">
        <label>
          {cost.open}
          <input
            type="file"
            accept=".yaml,.yml"
            onChange={(event) => void open(event.currentTarget.files?.[0])}
          />
        </label>
        <button type="button" class="plain" onClick={() => changeOwn({ ...own, prices: {} })}>
          {cost.forget}
        </button>
      </div>
    </details>
  );
}
