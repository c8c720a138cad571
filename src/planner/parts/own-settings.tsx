/** My tins, my settings: how many of each tin stand here, my eggs, bowl and scale; kept on the device only. */
import type { Problem } from '../../domain/problem.ts';
import type { PlannerContent } from '../../views/planner-content.ts';
import type { PlannerWords } from '../../wording/planner/index.ts';
import { told } from '../answer.ts';
import { NO_OWN_KITCHEN, type OwnKitchen } from '../own-kitchen.ts';

export interface OwnSettingsProps {
  own: OwnKitchen;
  changeOwn(next: OwnKitchen): void;
  published: PlannerContent;
  problems: Problem[];
  words: PlannerWords;
}

const counted = (text: string): number => Math.min(99, Math.max(0, Math.round(Number(text) || 0)));

export function OwnSettings({ own, changeOwn, published, problems, words }: OwnSettingsProps) {
  const field = (key: 'egg' | 'bowl' | 'step', example: string) => (
    <label>
      {words.own[key]}
      <input
        autocomplete="off"
        placeholder={example}
        value={own[key]}
        onInput={(event) => changeOwn({ ...own, [key]: event.currentTarget.value })}
      />
    </label>
  );
  return (
    <details class="own">
      <summary>{words.own.heading}</summary>
      <p>{words.own.lead}</p>
      <div class="fields">
        {field('egg', 'UK large, 52 g')}
        {field('bowl', '4.8 l')}
        {field('step', '5 g')}
      </div>
      <div role="status">
        {told(problems).map((text) => (
          <p class="wrong" key={text}>
            {text}
          </p>
        ))}
      </div>
      <div class="fields owned">
        {published.kitchen.tins.map(({ id, name, owned }) => (
          <label key={id}>
            {words.own.owned(name)}
            <input
              type="number"
              min="0"
              max="99"
              inputmode="numeric"
              value={own.owned[id] ?? owned}
              onInput={(event) =>
                changeOwn({ ...own, owned: { ...own.owned, [id]: counted(event.currentTarget.value) } })
              }
            />
          </label>
        ))}
      </div>
      <button type="button" class="plain" onClick={() => changeOwn(NO_OWN_KITCHEN)}>
        {words.own.forget}
      </button>
    </details>
  );
}
