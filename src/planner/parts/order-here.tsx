/** The plan as an order: what an order says beyond its tins, then its sheet and labels, made on this device. */
import { useState } from 'preact/hooks';
import type { PaperName } from '../../domain/kitchen.ts';
import { PLACE_KINDS } from '../../domain/order.ts';
import type { PlanView } from '../../views/plan.types.ts';
import { told } from '../answer.ts';
import { keepDetails, keptDetails } from '../device.ts';
import { handOver } from '../hand-over.ts';
import { madeOrder, type OrderFile, type OrderPrint, orderFile } from '../make-order.ts';
import type { OrderDetails } from '../order-file.ts';
import type { MadePrint } from '../print-shop.ts';
import type { PartProps } from './part-props.ts';

const PDF = 'application/pdf';

interface OrderProps extends PartProps {
  view: PlanView;
  paper: PaperName;
}

interface FieldsProps {
  details: OrderDetails;
  set(part: Partial<OrderDetails>): void;
  order: PartProps['words']['order'];
  title: string;
  mayStack: boolean;
}

function Fields({ details, set, order, title, mayStack }: FieldsProps) {
  const field = (key: 'title' | 'reference' | 'at' | 'wanted', type: string, example = '') => (
    <label>
      {order[key]}
      <input
        type={type}
        autocomplete="off"
        placeholder={example}
        value={details[key]}
        {...(type === 'number' ? { min: 1, max: 999, inputmode: 'numeric' as const } : {})}
        onInput={(event) => set({ [key]: event.currentTarget.value })}
      />
    </label>
  );
  return (
    <>
      <div class="fields">
        {field('title', 'text', title)}
        {field('reference', 'text', 'R-1042')}
        {field('at', 'datetime-local')}
        <label>
          {order.place}
          <select
            value={details.place}
            onChange={(event) =>
              set({
                place: PLACE_KINDS.find((kind) => kind === event.currentTarget.value) ?? details.place,
              })
            }
          >
            {PLACE_KINDS.map((kind) => (
              <option key={kind} value={kind}>
                {order.places[kind]}
              </option>
            ))}
          </select>
        </label>
        {field('wanted', 'number')}
      </div>
      <label>
        {order.notes}
        <textarea
          rows={2}
          value={details.notes}
          onInput={(event) => set({ notes: event.currentTarget.value })}
        />
      </label>
      {mayStack && (
        <p class="chips">
          <label>
            <input
              type="checkbox"
              checked={details.stacked}
              onChange={(event) => set({ stacked: event.currentTarget.checked })}
            />
            {order.stacked}
          </label>
        </p>
      )}
    </>
  );
}

/** Several files are offered one by one: a device takes only one at a time from a tap. */
function MadeFiles({ prints, made }: { prints: readonly MadePrint[]; made: string }) {
  if (prints.length < 2) return null;
  return (
    <>
      <p>{made}</p>
      <ul class="plain-list">
        {prints.map(({ title, fileName, bytes }) => (
          <li key={fileName}>
            <button type="button" class="plain" onClick={() => handOver(bytes, fileName, PDF)}>
              {title}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

export function OrderHere({ state, content, words, view, paper }: OrderProps) {
  const { order, print: printWords } = words;
  const [details, setDetails] = useState(keptDetails);
  const [busy, setBusy] = useState(false);
  const [wrong, setWrong] = useState<string[]>([]);
  const [prints, setPrints] = useState<MadePrint[]>([]);
  const set = (part: Partial<OrderDetails>): void => {
    const next = { ...details, ...part };
    setDetails(next);
    keepDetails(next);
  };
  const mayStack = state.tins.length > 1 && state.tins.every(({ count }) => count === 1);
  const title = details.title.trim() === '' ? view.title : details.title;
  const whole = { ...details, title, stacked: details.stacked && mayStack };
  const file = (): OrderFile | null => {
    const made = orderFile(state, content, whole);
    setWrong(made.ok ? [] : told(made.problems));
    return made.ok ? made.value : null;
  };
  const print = async (what: OrderPrint): Promise<void> => {
    const asked = file();
    setPrints([]);
    if (asked === null) return;
    setBusy(true);
    try {
      const made = await madeOrder(asked, what, paper);
      setWrong(made.ok ? made.value.refusals : told(made.problems));
      const files = made.ok ? made.value.prints : [];
      setPrints(files);
      const [only] = files;
      if (only !== undefined && files.length === 1) handOver(only.bytes, only.fileName, PDF);
    } catch {
      setWrong([printWords.failed]);
    }
    setBusy(false);
  };
  const save = (): void => {
    const asked = file();
    if (asked !== null) handOver(asked.text, `${asked.id}.yaml`, 'text/yaml');
  };
  const missing = details.reference.trim() === '' || details.at === '';
  const button = (text: string, act: () => void) => (
    <li>
      <button type="button" class="plain" disabled={busy || missing} onClick={act}>
        {text}
      </button>
    </li>
  );
  return (
    <details class="order">
      <summary>{order.heading}</summary>
      <p>{order.lead}</p>
      <Fields details={details} set={set} order={order} title={view.title} mayStack={mayStack} />
      {missing && <p class="quiet">{order.needs}</p>}
      <ul class="plain-list">
        {button(order.sheet, () => void print('orderSheet'))}
        {button(order.labels, () => void print('labels'))}
        {button(order.save, save)}
      </ul>
      <div role="status">
        {busy && <p>{printWords.busy}</p>}
        {wrong.map((text) => (
          <p class="wrong" key={text}>
            {text}
          </p>
        ))}
        <MadeFiles prints={prints} made={order.made} />
      </div>
    </details>
  );
}
