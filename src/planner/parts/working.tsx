/** How the figures came about, step by step, opened by whoever wants to know. */
import { useState } from 'preact/hooks';
import type { WorkingStep } from '../../views/working.types.ts';
import type { PlannerWords } from '../../wording/planner/index.ts';
import type { PlanAnswer } from '../answer.ts';
import { useWorking } from '../use-working.ts';

function Steps({ steps }: { steps: WorkingStep[] }) {
  return (
    <ol class="steps">
      {steps.map((step, at) => (
        <li class="step" key={`${step.id} ${at}`}>
          <h5>{step.title}</h5>
          {step.inputs.length > 0 && (
            <dl class="inputs">
              {step.inputs.map(({ label, text }, input) => (
                <div key={`${label} ${input}`}>
                  <dt>{label}</dt>
                  <dd>{text}</dd>
                </div>
              ))}
            </dl>
          )}
          <p class="sum">
            <span class="operation">{step.operation}</span> = <b class="output">{step.output.text}</b>{' '}
            <span class="output-label">{step.output.label}</span>
          </p>
          <p class="rule">
            {step.rule} <span class="source">{step.source}</span>
          </p>
        </li>
      ))}
    </ol>
  );
}

export function Working({ answer, words: { answer: words } }: { answer: PlanAnswer; words: PlannerWords }) {
  const [isOpen, setOpen] = useState(false);
  const working = useWorking(answer, isOpen);
  return (
    <details class="working" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.working}</summary>
      <p>{words.workingLead}</p>
      {working === 'failed' && <p class="wrong">{words.workingFailed}</p>}
      {working !== null && working !== 'failed' && (
        <>
          <h4>{words.sameForAll}</h4>
          <Steps steps={working.shared} />
          {working.rows.map((row) => (
            <section key={row.anchor}>
              <h4>{row.title}</h4>
              <Steps steps={row.steps} />
            </section>
          ))}
        </>
      )}
    </details>
  );
}
