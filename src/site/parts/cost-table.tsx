import type { VNode } from 'preact';
import { capital } from '../../base/units/index.js';
import { costParts } from '../../core/model/index.js';
import type { Cost } from '../../core/price/index.js';
import { MoneyCell } from './figures.js';
import { partWords } from './words.js';

/** A cost by what it is made of. */
export function CostTable({ cost, id }: { cost: Cost; id: string }): VNode {
  return (
    <table class="cost-table" id={id}>
      <caption>Cost in place</caption>
      <tbody>
        {costParts.map((part) => (
          <tr>
            <th scope="row">{capital(partWords[part])}</th>
            <td class="number">
              <MoneyCell cents={cost[part]} />
            </td>
          </tr>
        ))}
        <tr class="sum">
          <th scope="row">Total</th>
          <td class="number">
            <MoneyCell cents={cost.total} />
          </td>
        </tr>
      </tbody>
    </table>
  );
}
