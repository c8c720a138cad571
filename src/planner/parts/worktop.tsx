/** At the worktop: large type, a tick for every weight and step, timers for the oven, the screen kept awake. */
import { useEffect, useState } from 'preact/hooks';
import type { MethodPiece } from '../../views/method-text.types.ts';
import type { PlanView } from '../../views/plan.types.ts';
import type { PlannerWords } from '../../wording/planner/index.ts';
import { keepTicks, keptTicks } from '../device.ts';
import { useAwake } from '../use-awake.ts';
import { useMethod } from '../use-method.ts';
import { Timers } from './timers.tsx';

export interface WorktopProps {
  view: PlanView;
  words: PlannerWords;
  unit: string;
  /** The plan's address: ticks belong to it. */
  plan: string;
  leave(): void;
}

interface Tickable {
  id: string;
  /** The figure, in the largest type; empty for a step. */
  figure: string;
  text: string;
}

interface TickGroup {
  title: string;
  about: string;
  items: Tickable[];
}

/** Every bowl's weights in the order they go in, eggs first said as they are counted. */
function weighing({ view, unit, words }: WorktopProps): TickGroup[] {
  return view.loads.map((load, at) => ({
    title: view.loads.length > 1 ? load.name : words.worktop.weigh,
    about: words.answer.fills(load.fillsText),
    items: [
      // Where egg is weighed it is an ingredient like the others.
      ...(load.eggs === null || load.eggs.rule === 'weigh'
        ? []
        : [{ id: `${at}-eggs`, figure: load.eggs.text, text: '' }]),
      ...view.columns.flatMap(({ id, name }, column): Tickable[] => {
        const amount = load.amounts[column];
        if (amount === undefined) return [];
        const spoons = amount.spoons === null ? '' : ` (${amount.spoons})`;
        return [{ id: `${at}-${id}`, figure: `${amount.figure.text} ${unit}`, text: `${name}${spoons}` }];
      }),
    ],
  }));
}

function pouring({ view, unit, words }: WorktopProps): TickGroup {
  return {
    title: words.answer.tins,
    about: '',
    items: view.tins.flatMap((tin) =>
      Array.from({ length: tin.count }, (_, at) => ({
        id: `pour-${tin.id}-${at}`,
        figure: `${tin.receives.text} ${unit}`,
        text: tin.count > 1 ? `${tin.name}, ${at + 1}` : tin.name,
      })),
    ),
  };
}

const textOf = (piece: MethodPiece): string =>
  piece.kind === 'heading' ? piece.text : piece.spans.map(({ text }) => text).join('');

/** Items to do are ticked; headings and paragraphs are read. */
function MethodSteps({ method, ticks, tick }: { method: readonly MethodPiece[] } & TickProps) {
  return (
    <>
      {method.map((piece, at) => {
        const key = `step-${at}`;
        if (piece.kind === 'heading') return <h3 key={key}>{piece.text}</h3>;
        if (piece.kind === 'paragraph') return <p key={key}>{textOf(piece)}</p>;
        return (
          <Tick key={key} item={{ id: key, figure: '', text: textOf(piece) }} ticks={ticks} tick={tick} />
        );
      })}
    </>
  );
}

interface TickProps {
  ticks: ReadonlySet<string>;
  tick(id: string): void;
}

function Tick({ item, ticks, tick }: TickProps & { item: Tickable }) {
  return (
    <label class={ticks.has(item.id) ? 'tick done' : 'tick'}>
      <input type="checkbox" checked={ticks.has(item.id)} onChange={() => tick(item.id)} />
      <span>
        {item.figure !== '' && <b>{item.figure}</b>} {item.text}
      </span>
    </label>
  );
}

export function Worktop(props: WorktopProps) {
  const { view, words, plan, leave } = props;
  const method = useMethod(view.recipe.id);
  const awake = useAwake();
  const [ticks, setTicks] = useState<ReadonlySet<string>>(() => new Set(keptTicks(plan)));
  const tick = (id: string): void => {
    const next = new Set(ticks);
    if (!next.delete(id)) next.add(id);
    setTicks(next);
    keepTicks(plan, [...next]);
  };
  useEffect(() => {
    document.querySelector<HTMLElement>('.worktop h2')?.focus();
    scrollTo({ top: 0 });
  }, []);
  const groups = [...weighing(props), pouring(props)];
  const all = groups.flatMap(({ items }) => items);
  const done = all.filter(({ id }) => ticks.has(id)).length;
  return (
    <div class="worktop">
      <h2 tabIndex={-1}>{view.title}</h2>
      <p class="quiet">
        {words.worktop.done(String(done), String(all.length))}.{' '}
        {awake ? words.worktop.awake : words.worktop.notAwake}
      </p>
      {groups.map(({ title, about, items }) => (
        <section key={title}>
          <h3>{title}</h3>
          {about !== '' && <p>{about}</p>}
          {items.map((item) => (
            <Tick key={item.id} item={item} ticks={ticks} tick={tick} />
          ))}
        </section>
      ))}
      <Timers view={view} words={words} />
      {view.cautions.map(({ code, text }) => (
        <p class="caution" key={code}>
          <b>{words.answer.caution}:</b> {text}
        </p>
      ))}
      <section class="method">
        <h2>{words.worktop.method}</h2>
        {method === 'failed' && <p class="wrong">{words.answer.workingFailed}</p>}
        {method !== 'failed' && <MethodSteps method={method ?? []} ticks={ticks} tick={tick} />}
      </section>
      <button type="button" class="next leave" onClick={leave}>
        {words.worktop.leave}
      </button>
    </div>
  );
}
