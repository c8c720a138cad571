/** The shelf: every tin with its picture; a tap puts all that is owned of it on the plan, then one more or fewer. */
import { useMemo, useState } from 'preact/hooks';
import { tinBoundsMm } from '../../compute/shapes/index.ts';
import type { Tin } from '../../domain/tin.ts';
import { pictureOfTin } from '../../views/picture-of-tin.ts';
import { wordsFor } from '../../wording/locales/index.ts';
import { tinSize } from '../../wording/tin-size.ts';
import { countOf, type TinOnPlan, withTin } from '../plan-state.ts';
import type { PartProps } from './part-props.ts';
import { TinPlan } from './tin-plan.tsx';

interface TinTileProps extends PartProps {
  tin: Tin;
  frameMm: number;
}

function TinTile({ tin, frameMm, state, change, content, words }: TinTileProps) {
  const own = wordsFor(content.kitchen.locale);
  // The same as long as the tin is: a change of the plan leaves every drawing as it stands.
  const face = useMemo(
    () => (
      <>
        <TinPlan picture={pictureOfTin(tin, own)} frameMm={frameMm} />
        <span class="tin-name">{tin.name}</span>
        <span class="tin-size">{tinSize(tin, own)}</span>
      </>
    ),
    [tin, own, frameMm],
  );
  const count = countOf(state, tin.id);
  const first = Math.max(1, tin.owned);
  const to = (next: number) => change(withTin(state, tin.id, next));
  return (
    <li class={count > 0 ? 'on' : ''}>
      <button
        type="button"
        class="tin"
        aria-pressed={count > 0}
        title={count > 0 ? words.tins.remove(tin.name) : words.tins.add(first, tin.name)}
        onClick={() => to(count > 0 ? 0 : first)}
      >
        {face}
      </button>
      {count > 0 && (
        <span class="steps-of">
          <button
            type="button"
            aria-label={words.tins.fewer(tin.name)}
            onClick={({ currentTarget }) => {
              // The last one takes this button with it: the keyboard stays with the tin.
              if (count === 1) currentTarget.closest('li')?.querySelector('button')?.focus();
              to(count - 1);
            }}
          >
            −
          </button>
          <output aria-live="off" aria-label={words.tins.onPlan(count)}>
            {count}
          </output>
          <button type="button" aria-label={words.tins.more(tin.name)} onClick={() => to(count + 1)}>
            +
          </button>
        </span>
      )}
    </li>
  );
}

interface Shown {
  tin: Tin;
  /** Null for a tin known only by its water: it comes last. */
  widthMm: number | null;
}

const byWidth = (a: Shown, b: Shown): number =>
  Number(a.widthMm === null) - Number(b.widthMm === null) ||
  (a.widthMm ?? 0) - (b.widthMm ?? 0) ||
  (a.tin.id < b.tin.id ? -1 : 1);

export function TinShelf(props: PartProps) {
  const { content, words, state, change } = props;
  const [cleared, setCleared] = useState<TinOnPlan[]>([]);
  const clear = (): void => {
    setCleared(state.tins);
    change({ ...state, tins: [] });
  };
  const bringBack = (): void => change({ ...state, tins: cleared });
  const shown = content.kitchen.tins
    .filter((tin) => tin.owned > 0 || countOf(state, tin.id) > 0)
    .map((tin): Shown => {
      return { tin, widthMm: tinBoundsMm(tin)?.widthMm ?? null };
    })
    .sort(byWidth);
  const frameMm = Math.max(100, ...shown.map(({ widthMm }) => widthMm ?? 0));
  return (
    <section aria-labelledby="shelf">
      <h2 id="shelf">{words.tins.heading}</h2>
      <p>{words.tins.lead}</p>
      <ul class="tin-shelf">
        {shown.map(({ tin }) => (
          <TinTile key={tin.id} {...props} tin={tin} frameMm={frameMm} />
        ))}
      </ul>
      {(state.tins.length > 0 || cleared.length > 0) && (
        // One button for both: the keyboard stays where it is.
        <button type="button" class="plain" onClick={state.tins.length > 0 ? clear : bringBack}>
          {state.tins.length > 0 ? words.tins.clear : words.tins.bringBack}
        </button>
      )}
    </section>
  );
}
