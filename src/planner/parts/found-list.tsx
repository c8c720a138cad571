/** Answers to the question the other way round: fills for so many eggs, stacks for so many guests; a tap plans one. */
import { answerIn } from '../../views/in-ounces.ts';
import { leftOver } from '../../wording/left-over.ts';
import { eggsAnswer, portionsAnswer } from '../answer.ts';
import type { PlanState, TinOnPlan } from '../plan-state.ts';
import { Weights } from './answer-panel.tsx';
import type { PartProps } from './part-props.ts';
import { Said } from './said.tsx';

interface Found {
  key: string;
  text: string;
  facts: string;
  tins: TinOnPlan[];
}

const planned = (state: PlanState, tins: TinOnPlan[]): PlanState => ({ ...state, tins, ask: 'tins' });

function FoundList({ found, state, change, words }: PartProps & { found: Found[] }) {
  return (
    <ul class="found">
      {found.map(({ key, text, facts, tins }) => (
        <li key={key}>
          <button type="button" title={words.answer.take(text)} onClick={() => change(planned(state, tins))}>
            <b>{text}</b>
            <small>{facts}</small>
          </button>
        </li>
      ))}
    </ul>
  );
}

export function EggsFound(props: PartProps) {
  const { state, content, words } = props;
  const answer = eggsAnswer(state, content);
  if (answer === null) return <p>{words.answer.noFills}</p>;
  const { fills, columns } = answer;
  const shown = <View,>(view: View): View => answerIn(view, content.kitchen, state.mass);
  const rung = shown(answer.rung);
  const found = answer.rung.fills.map(({ text, left }, at): Found => {
    const tins = (fills[at] ?? []).map(({ id, count }) => ({ tin: id, count }));
    return { key: text, text, facts: shown(leftOver(left, words.answer.leftOver)), tins };
  });
  return (
    <section class="answer" aria-labelledby="plan">
      <Said text={`${rung.eggText}, ${words.answer.batter(rung.batter.text, state.mass)}`} />
      <p class="headline">
        <span class="eggs">{rung.eggText}</span>
        <span class="batter">{words.answer.batter(rung.batter.text, state.mass)}</span>
      </p>
      {found.length === 0 ? <p>{words.answer.noFills}</p> : <FoundList {...props} found={found} />}
      <h3>{words.answer.weigh}</h3>
      <Weights columns={columns} amounts={rung.amounts} unit={state.mass} />
    </section>
  );
}

export function PortionsFound(props: PartProps & { noStack: string; over: string }) {
  const { state, content, words, noStack, over } = props;
  const answer = portionsAnswer(state, content);
  const shown = (text: string): string => answerIn(text, content.kitchen, state.mass);
  const found = (answer?.choices ?? []).map(
    (choice): Found => ({
      key: choice.text,
      text: choice.text,
      facts: shown(
        [
          words.answer.serves(choice.portions.text),
          `${over.toLowerCase()}: ${choice.over.text}`,
          choice.eggsText.toLowerCase(),
          words.answer.batter(choice.batter.text, 'g'),
          `${choice.height.text} mm`,
        ].join(', '),
      ),
      tins: choice.tiers.map(({ id }) => ({ tin: id, count: 1 })),
    }),
  );
  const [best] = found;
  return (
    <section class="answer" aria-labelledby="plan">
      <Said text={best === undefined ? noStack : `${best.text}: ${best.facts}`} />
      {found.length === 0 ? <p>{noStack}</p> : <FoundList {...props} found={found} />}
    </section>
  );
}
