/** A timer for the first look at every tin, and for the latest it should take; they ring on the page and by sound. */
import { useEffect, useState } from 'preact/hooks';
import { nearestFive } from '../../domain/bake-minutes.ts';
import type { PlanTin, PlanView } from '../../views/plan.types.ts';
import type { PlannerWords } from '../../wording/planner/index.ts';
import { ring } from '../ring.ts';

interface Timer {
  id: string;
  name: string;
  minutes: number;
}

const MS_PER_MIN = 60_000;
const TICK_MS = 500;

function timersOf(tins: readonly PlanTin[], { worktop }: PlannerWords): Timer[] {
  return tins.flatMap(({ id, name, bake }) =>
    bake === null
      ? []
      : [
          {
            id: `${id}-look`,
            name: `${name}, ${worktop.firstLook}`,
            minutes: nearestFive(bake.firstLook.value),
          },
          { id: `${id}-by`, name: `${name}, ${worktop.doneBy}`, minutes: nearestFive(bake.expectedBy.value) },
        ],
  );
}

/** 7:05 */
function left(ms: number): string {
  const seconds = Math.max(0, Math.ceil(ms / 1000));
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

export function Timers({ view, words }: { view: PlanView; words: PlannerWords }) {
  const [ends, setEnds] = useState<Record<string, number>>({});
  const [now, setNow] = useState(() => Date.now());
  const running = Object.keys(ends).length > 0;
  const timers = timersOf(view.tins, words);
  useEffect(() => {
    if (!running) return undefined;
    const pulse = setInterval(() => setNow(Date.now()), TICK_MS);
    return () => clearInterval(pulse);
  }, [running]);
  const rung = timers.filter(({ id }) => (ends[id] ?? Number.POSITIVE_INFINITY) <= now);
  const rungIds = rung.map(({ id }) => id).join(' ');
  useEffect(() => {
    if (rungIds !== '') ring();
  }, [rungIds]);
  const start = ({ id, minutes }: Timer): void => {
    setNow(Date.now());
    setEnds({ ...ends, [id]: Date.now() + minutes * MS_PER_MIN });
  };
  const stop = (id: string): void => {
    const { [id]: _, ...others } = ends;
    setEnds(others);
  };
  if (timers.length === 0) return null;
  return (
    <section class="timers">
      <h3>{words.worktop.timer}</h3>
      <div role="alert">
        {rung.map(({ id, name }) => (
          <p class="rung" key={id}>
            <b>{words.worktop.ringing(name)}</b>
          </p>
        ))}
      </div>
      <ul class="plain-list">
        {timers.map((timer) => {
          const end = ends[timer.id];
          return (
            <li key={timer.id}>
              {end === undefined ? (
                <button type="button" class="timer" onClick={() => start(timer)}>
                  {words.worktop.startTimer(timer.name)} <b>{words.worktop.minutes(String(timer.minutes))}</b>
                </button>
              ) : (
                <button type="button" class="timer going" onClick={() => stop(timer.id)}>
                  {timer.name} <b>{left(end - now)}</b> {words.worktop.stopTimer}
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
