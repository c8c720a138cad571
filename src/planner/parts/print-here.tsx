/** Print my plan, my chart, my templates: made on this device, and offered as files. */
import { useState } from 'preact/hooks';
import type { PaperName } from '../../domain/kitchen.ts';
import type { Result } from '../../domain/result.ts';
import { usualMass } from '../../views/home-units.ts';
import type { PlanView } from '../../views/plan.types.ts';
import { told } from '../answer.ts';
import { handOver } from '../hand-over.ts';
import { printShop } from '../load-print-shop.ts';
import { planText } from '../plan-state.ts';
import type { PrintShop } from '../print-shop.ts';
import { recipeOf } from '../question.ts';
import { OrderHere } from './order-here.tsx';
import type { PartProps } from './part-props.ts';

const PAPERS: readonly PaperName[] = ['A4', 'Letter'];

interface PrintAsk {
  text: string;
  fileName: string;
  make(shop: PrintShop): Result<Uint8Array>;
}

async function printed(ask: PrintAsk, failed: string): Promise<string[]> {
  try {
    const shop = await printShop();
    if (!shop.ok) return told(shop.problems);
    const made = ask.make(shop.value);
    if (!made.ok) return told(made.problems);
    handOver(made.value, ask.fileName, 'application/pdf');
    return [];
  } catch {
    return [failed];
  }
}

interface PrintProps extends PartProps {
  /** Null while there is no plan. */
  view: PlanView | null;
}

function planAsk({ state, content, words, view }: PrintProps, paper: PaperName): PrintAsk[] {
  if (view === null) return [];
  const address = planText(state, usualMass(content.kitchen));
  return [
    {
      text: words.print.plan,
      fileName: `${view.chartId}-plan-${paper.toLowerCase()}.pdf`,
      make: (shop) => shop.plan(content, view, { address, paper, mass: state.mass }),
    },
  ];
}

function asks(props: PrintProps, paper: PaperName): PrintAsk[] {
  const { state, content, words } = props;
  const recipe = recipeOf(state, content);
  if (recipe === null) return [];
  const { flavourIds, mass } = state;
  const short = paper.toLowerCase();
  const templates = content.kitchen.tins.filter(({ id }) => state.tins.some(({ tin }) => tin === id));
  return [
    ...planAsk(props, paper),
    {
      text: words.print.chart(recipe.name),
      fileName: `${[recipe.id, ...flavourIds].join('--')}-${short}.pdf`,
      make: (shop) => shop.chart(content, { recipeId: recipe.id, flavourIds, paper, mass }),
    },
    ...templates.map(
      ({ id, name }): PrintAsk => ({
        text: words.print.template(name),
        fileName: `${id.replace(/[^a-z0-9]+/gi, '-')}-${short}.pdf`,
        make: (shop) => shop.template(content, id, paper),
      }),
    ),
  ];
}

export function PrintHere(props: PrintProps) {
  const { content, words } = props;
  const [paper, setPaper] = useState<PaperName>(content.kitchen.paper[0] ?? 'A4');
  const [busy, setBusy] = useState(false);
  const [wrong, setWrong] = useState<string[]>([]);
  const print = async (ask: PrintAsk): Promise<void> => {
    setBusy(true);
    setWrong(await printed(ask, words.print.failed));
    setBusy(false);
  };
  return (
    <section class="print-here">
      <h3>{words.print.heading}</h3>
      <p>{words.print.lead}</p>
      <label>
        {words.print.paper}
        <select
          value={paper}
          onChange={(event) => setPaper(event.currentTarget.value === 'Letter' ? 'Letter' : 'A4')}
        >
          {PAPERS.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <ul class="plain-list">
        {asks(props, paper).map((ask) => (
          <li key={ask.fileName}>
            <button type="button" class="plain" disabled={busy} onClick={() => void print(ask)}>
              {ask.text}
            </button>
          </li>
        ))}
      </ul>
      {props.view !== null && <OrderHere {...props} view={props.view} paper={paper} />}
      <div role="status">
        {busy && <p>{words.print.busy}</p>}
        {wrong.map((text) => (
          <p class="wrong" key={text}>
            {text}
          </p>
        ))}
      </div>
    </section>
  );
}
