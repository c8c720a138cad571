/** The planner: the question left or above, the answer right or below; the address holds the plan. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import { usualMass } from '../views/home-units.ts';
import type { PlannerContent } from '../views/planner-content.ts';
import { type PlannerWords, plannerWordsFor } from '../wording/planner/index.ts';
import { portionsWordsFor } from '../wording/portions/index.ts';
import { planAnswer, told } from './answer.ts';
import { keepKitchen, keptKitchen } from './device.ts';
import { knownPlan } from './known-plan.ts';
import { kitchenHere, type OwnKitchen } from './own-kitchen.ts';
import { withOwnPrices } from './own-prices.ts';
import { AnswerPanel } from './parts/answer-panel.tsx';
import { EggsFound, PortionsFound } from './parts/found-list.tsx';
import { Options } from './parts/options.tsx';
import { OtherTin } from './parts/other-tin.tsx';
import { OwnPrices } from './parts/own-prices.tsx';
import { OwnSettings } from './parts/own-settings.tsx';
import type { PartProps } from './parts/part-props.ts';
import { CostOfPlan } from './parts/plan-cost.tsx';
import { PrintHere } from './parts/print-here.tsx';
import { RecipeChoice } from './parts/recipe-choice.tsx';
import { Said } from './parts/said.tsx';
import { SendPlan } from './parts/send-plan.tsx';
import { TinShelf } from './parts/tin-shelf.tsx';
import { Working } from './parts/working.tsx';
import { Worktop } from './parts/worktop.tsx';
import { addressSoon, dropAddress, writeOnLeaving } from './plan-address.ts';
import { type PlanState, planFrom, planText } from './plan-state.ts';
import { useOpenedKitchen } from './use-opened-kitchen.ts';

interface InShortProps {
  answer: Answered;
  words: PlannerWords;
  unit: string;
}

/** 'Three eggs, 660 g of batter', or what is wrong. */
function inShort({ answer, words, unit }: InShortProps): string {
  if (answer === null) return words.answer.empty;
  if (!answer.ok) return `${words.answer.wrong}: ${told(answer.problems).join(' ')}`;
  const { eggs, batter } = answer.value.view;
  return [...(eggs ? [eggs.text] : []), words.answer.batter(batter.text, unit)].join(', ');
}

/** On a phone the answer lies below the tins: its two main figures stay in sight. */
function InSight({ answer, words, unit }: InShortProps) {
  if (!answer?.ok) return null;
  return (
    <button type="button" class="in-sight" onClick={showPlan}>
      <b>{inShort({ answer, words, unit })}</b>
      <span>{words.answer.toPlan}</span>
    </button>
  );
}

/** The address is the plan's own: going to the answer must not change it. */
function showPlan(): void {
  const heading = document.getElementById('plan');
  heading?.scrollIntoView();
  heading?.focus({ preventScroll: true });
}

function Answer({ state, content, words, answer }: PartProps & { answer: Answered }) {
  const sizeName = portionsWordsFor(content.kitchen.locale).sizeNames[state.size].toLowerCase();
  if (answer === null) return <p class="empty">{words.answer.empty}</p>;
  if (!answer.ok) {
    return (
      <>
        <p class="wrong">{words.answer.wrong}:</p>
        {told(answer.problems).map((text) => (
          <p class="wrong" key={text}>
            {text}
          </p>
        ))}
      </>
    );
  }
  return (
    <>
      <AnswerPanel view={answer.value.view} words={words} unit={state.mass} sizeName={sizeName} />
      {answer.value.cost !== null && <CostOfPlan cost={answer.value.cost} words={words} />}
      <Working answer={answer.value} words={words} />
    </>
  );
}

/** The plan of the address; a change is written back, a moment behind. */
function useAddress(mass: PlanState['mass']): [PlanState, (next: PlanState) => void] {
  const [state, setState] = useState(() => planFrom(location.hash, mass));
  useEffect(() => {
    const follow = (): void => {
      dropAddress();
      setState(planFrom(location.hash, mass));
    };
    const stop = writeOnLeaving();
    addEventListener('hashchange', follow);
    return () => {
      stop();
      removeEventListener('hashchange', follow);
    };
  }, []);
  const change = (next: PlanState): void => {
    setState(next);
    addressSoon(`#${planText(next, mass)}`);
  };
  return [state, change];
}

function useOwnKitchen(): [OwnKitchen, (next: OwnKitchen) => void] {
  const [own, setOwn] = useState(keptKitchen);
  const changeOwn = (next: OwnKitchen): void => {
    setOwn(next);
    keepKitchen(next);
  };
  return [own, changeOwn];
}

type Answered = ReturnType<typeof planAnswer>;

export function PlannerApp({ published }: { published: PlannerContent }) {
  const words = plannerWordsFor(published.kitchen.locale);
  const portionsWords = portionsWordsFor(published.kitchen.locale);
  const [sent, change] = useAddress(usualMass(published.kitchen));
  const { state, unknown } = useMemo(() => knownPlan(sent, published), [sent, published]);
  const [own, changeOwn] = useOwnKitchen();
  const opened = useOpenedKitchen(own.file, published);
  const base = opened.kitchen ?? published.kitchen;
  const here = useMemo(() => kitchenHere(base, own, published.outlines), [base, own, published]);
  const settled = useMemo(() => ({ ...published, ...opened.settings }), [published, opened]);
  const priced = useMemo(
    () => withOwnPrices(published.ingredients, own.prices, settled.currency),
    [published, own.prices, settled],
  );
  const content = useMemo(
    () => ({ ...settled, kitchen: here.kitchen, ingredients: priced.ingredients }),
    [settled, here, priced],
  );
  const answer = useMemo(() => (state.ask === 'tins' ? planAnswer(state, content) : null), [state, content]);
  const props: PartProps = { state, change, content, words };
  const [atWorktop, setAtWorktop] = useState(false);
  if (atWorktop && answer?.ok) {
    return (
      <Worktop
        view={answer.value.view}
        words={words}
        unit={state.mass}
        plan={planText(state, usualMass(content.kitchen))}
        leave={() => {
          setAtWorktop(false);
          // Once the plan is drawn again, the keyboard is back where it left.
          setTimeout(() => document.querySelector<HTMLElement>('.answer > .next')?.focus());
        }}
      />
    );
  }
  return (
    <div class="planner">
      <div class="asking">
        {unknown.length > 0 && <p class="wrong">{words.answer.notHere(unknown.join(', '))}</p>}
        <RecipeChoice {...props} />
        {state.ask === 'tins' && (
          <>
            <TinShelf {...props} />
            <OtherTin {...props} />
          </>
        )}
        <Options {...props} />
        <OwnSettings
          own={own}
          changeOwn={changeOwn}
          base={base}
          isOpened={opened.kitchen !== null}
          kitchen={here.kitchen}
          problems={[...opened.problems, ...here.problems]}
          words={words}
        />
        <OwnPrices {...props} own={own} changeOwn={changeOwn} answer={answer} problems={priced.problems} />
      </div>
      <div class="answering">
        <h2 id="plan" tabIndex={-1}>
          {words.answer.heading}
        </h2>
        {state.ask === 'tins' && (
          <section class="answer" aria-labelledby="plan">
            <Said text={inShort({ answer, words, unit: state.mass })} />
            <Answer {...props} answer={answer} />
            {answer?.ok && (
              <button type="button" class="next" onClick={() => setAtWorktop(true)}>
                {words.worktop.start}
              </button>
            )}
          </section>
        )}
        {state.ask === 'eggs' && <EggsFound {...props} />}
        {state.ask === 'portions' && (
          <PortionsFound {...props} noStack={portionsWords.noStack} over={portionsWords.over} />
        )}
        {answer?.ok && <SendPlan title={answer.value.view.title} words={words} />}
        <PrintHere {...props} view={answer?.ok ? answer.value.view : null} />
      </div>
      <InSight answer={answer} words={words} unit={state.mass} />
    </div>
  );
}
