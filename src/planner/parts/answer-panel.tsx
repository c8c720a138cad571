/** The answer: eggs and batter first, then weights, bowls, tins, finishes, what it serves, cautions and working. */
import type { Warning } from '../../domain/problem.ts';
import type { Caution } from '../../views/figure.ts';
import type { PlanFinish, PlanLoad, PlanTin, PlanView } from '../../views/plan.types.ts';
import type { Amount, ChartColumn } from '../../views/tin-chart.types.ts';
import type { PlannerWords } from '../../wording/planner/index.ts';

export interface AnswerProps {
  view: PlanView;
  words: PlannerWords;
  /** 'g' or 'oz'. */
  unit: string;
  /** The chosen portion's name, in a sentence. */
  sizeName: string;
}

export function Weights({
  columns,
  amounts,
  unit,
}: {
  columns: ChartColumn[];
  amounts: Amount[];
  unit: string;
}) {
  return (
    <table class="weights">
      <tbody>
        {columns.map(({ id, name }, at) => {
          const amount = amounts[at];
          return (
            <tr key={id}>
              <th scope="row">{name}</th>
              <td>
                <b>{amount?.figure.text}</b> {unit}
                {amount?.spoons && <small> {amount.spoons}</small>}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function Bowl({ load, view, words, unit }: AnswerProps & { load: PlanLoad }) {
  return (
    <section class="bowl">
      <h4>{load.name}</h4>
      <p>
        {load.eggs && <b>{load.eggs.text}, </b>}
        <b>{words.answer.batter(load.batter.text, unit)}</b>. {words.answer.fills(load.fillsText)}
      </p>
      <Weights columns={view.columns} amounts={load.amounts} unit={unit} />
    </section>
  );
}

function TinLine({ tin, words, unit }: { tin: PlanTin; words: PlannerWords; unit: string }) {
  const { answer } = words;
  const pour = tin.count > 1 ? answer.inEach(tin.receives.text, unit) : answer.pour(tin.receives.text, unit);
  const facts = [
    answer.stands(tin.rawFill.text, tin.rawFillShare.text),
    answer.bakesTo(tin.finishedHeight.text),
    ...(tin.portions ? [answer.serves(tin.portions.text)] : []),
  ];
  return (
    <li>
      <p>
        <b>
          {tin.count > 1 && `${tin.count} × `}
          {tin.name}
        </b>{' '}
        <small>{tin.sizeText}</small>
        <br />
        <b class="pour">{pour}</b>
        <br />
        {facts.join(', ')}.
      </p>
      {tin.bake && (
        <p>
          {answer.bake(tin.bake.dial.text, tin.bake.firstLook.text, tin.bake.expectedBy.text)}.{' '}
          {tin.bake.advice} <small>{tin.bake.bakes.text}</small>
        </p>
      )}
      <Warnings warnings={tin.warnings} word={answer.check} />
    </li>
  );
}

function Finish({ finish, words, unit }: { finish: PlanFinish; words: PlannerWords; unit: string }) {
  const { answer } = words;
  return (
    <li>
      <p>
        <b>{finish.finish.name}</b> <small>{finish.useText}</small>
        <br />
        <b>{answer.make(finish.make.text, unit)}</b>
        {finish.buy && `, ${answer.buy(finish.buy.text, unit)}`}, {answer.onCake(finish.needed.text, unit)}.
        {finish.parts.length > 1 && (
          <>
            <br />
            {finish.parts
              .map(
                ({ name, amount }) =>
                  `${name} ${amount.figure.text} ${unit}${amount.spoons ? ` (${amount.spoons})` : ''}`,
              )
              .join(', ')}
            .
          </>
        )}
        {finish.perCake.length > 0 && (
          <>
            <br />
            <small>{finish.perCake.map(({ text }) => text).join(', ')}</small>
          </>
        )}
      </p>
    </li>
  );
}

function Warnings({ warnings, word }: { warnings: Warning[]; word: string }) {
  return (
    <>
      {warnings.map(({ code, message }) => (
        <p class="warning" key={`${code} ${message}`}>
          <b>{word}:</b> {message}
        </p>
      ))}
    </>
  );
}

function Cautions({ cautions, word }: { cautions: Caution[]; word: string }) {
  return (
    <div class="cautions">
      {cautions.map(({ code, text }) => (
        <p class="caution" key={code}>
          <b>{word}:</b> {text}
        </p>
      ))}
    </div>
  );
}

export function AnswerPanel(props: AnswerProps) {
  const { view, words, unit, sizeName } = props;
  const { answer } = words;
  return (
    <>
      <p class="headline">
        {view.eggs && <span class="eggs">{view.eggs.text}</span>}
        <span class="batter">{answer.batter(view.batter.text, unit)}</span>
      </p>
      <p class="quiet">
        {view.title}. {view.eggSizeText}
        {view.eggs && ` (${answer.exactly(view.eggs.exact.text)})`}.
      </p>
      <h3>{answer.weigh}</h3>
      <Weights columns={view.columns} amounts={view.amounts} unit={unit} />
      <p>
        <b>{answer.left}:</b> {view.surplusText}.
      </p>
      <Warnings warnings={view.warnings} word={answer.check} />
      {view.loads.length > 1 && (
        <>
          <h3>{answer.bowls}</h3>
          {view.loads.map((load) => (
            <Bowl key={load.name} {...props} load={load} />
          ))}
        </>
      )}
      <h3>{answer.tins}</h3>
      {view.bake && <p class="quiet">{view.bake.basisText}</p>}
      <ul class="lines">
        {view.tins.map((tin) => (
          <TinLine key={tin.id} tin={tin} words={words} unit={unit} />
        ))}
      </ul>
      {view.portions && <p>{answer.servesAll(view.portions.text, sizeName)}</p>}
      {view.finishes.length > 0 && (
        <>
          <h3>{answer.finishes}</h3>
          <ul class="lines">
            {view.finishes.map((finish) => (
              <Finish key={finish.id} finish={finish} words={words} unit={unit} />
            ))}
          </ul>
        </>
      )}
      {view.unfinished.map((text) => (
        <p class="warning" key={text}>
          {text}
        </p>
      ))}
      <Cautions cautions={view.cautions} word={answer.caution} />
    </>
  );
}
