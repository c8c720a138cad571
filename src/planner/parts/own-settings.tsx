/** My tins, my settings: how many of each tin stand here, my eggs, bowl and scale; kept on the device only. */
import { useState } from 'preact/hooks';
import type { Kitchen } from '../../domain/kitchen.ts';
import type { Problem } from '../../domain/problem.ts';
import type { PlannerWords } from '../../wording/planner/index.ts';
import { told } from '../answer.ts';
import { NO_OWN_KITCHEN, type OwnKitchen } from '../own-kitchen.ts';
import { saveKitchen } from '../save-kitchen.ts';

export interface OwnSettingsProps {
  own: OwnKitchen;
  changeOwn(next: OwnKitchen): void;
  /** The kitchen whose tins are counted: the published one, or one that was opened. */
  base: Kitchen;
  isOpened: boolean;
  /** With this device's settings in place: what is saved. */
  kitchen: Kitchen;
  problems: Problem[];
  words: PlannerWords;
}

/** The file takes the place of what was set before; a file that cannot be read says so once it is read. */
async function opened(
  file: File | undefined,
  own: OwnKitchen,
  changeOwn: (next: OwnKitchen) => void,
): Promise<void> {
  if (file === undefined) return;
  changeOwn({ ...NO_OWN_KITCHEN, tins: own.tins, prices: own.prices, file: await file.text() });
}

const counted = (text: string): number => Math.min(99, Math.max(0, Math.round(Number(text) || 0)));

export function OwnSettings({ own, changeOwn, base, isOpened, kitchen, problems, words }: OwnSettingsProps) {
  const [failed, setFailed] = useState(false);
  const save = (): void => {
    setFailed(false);
    saveKitchen(kitchen, base, isOpened ? own.file : '').catch(() => setFailed(true));
  };
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
        {field('egg', words.own.examples.egg)}
        {field('bowl', words.own.examples.bowl)}
        {field('step', words.own.examples.step)}
      </div>
      <div role="status">
        {[...(failed ? [words.own.unsaved] : []), ...told(problems)].map((text) => (
          <p class="wrong" key={text}>
            {text}
          </p>
        ))}
      </div>
      <div class="fields owned">
        {base.tins.map(({ id, name, owned }) => (
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
      <div class="fields">
        <button type="button" class="plain" onClick={save}>
          {words.own.save}
        </button>
        <label>
          {words.own.open}
          <input
            type="file"
            accept=".yaml,.yml"
            onChange={(event) => void opened(event.currentTarget.files?.[0], own, changeOwn)}
          />
        </label>
      </div>
      <button type="button" class="plain" onClick={() => changeOwn(NO_OWN_KITCHEN)}>
        {words.own.forget}
      </button>
    </details>
  );
}
