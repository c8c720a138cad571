/** What the ingredients of the plan cost; line by line for whoever opens it, as somebody may look over the shoulder. */
import type { PlanCost } from '../../views/plan-cost.ts';
import type { PlannerWords } from '../../wording/planner/index.ts';

export function CostOfPlan({ cost, words: { cost: words } }: { cost: PlanCost; words: PlannerWords }) {
  return (
    <details class="cost">
      <summary>
        {words.heading}: <b>{cost.total.text}</b>
      </summary>
      <p>{words.lead}</p>
      <table class="weights">
        <tbody>
          {cost.lines.map(({ id, name, amount, cost: each }) => (
            <tr key={id}>
              <th scope="row">
                {name} <small>{amount.text}</small>
              </th>
              <td>{each.text}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {cost.unpricedText !== null && <p>{words.unpriced(cost.unpricedText)}</p>}
    </details>
  );
}
