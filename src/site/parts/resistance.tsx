import type { VNode } from 'preact';
import { assemblySteps } from '../../table/index.js';
import type { AssemblyResistance } from '../../core/takeoff/index.js';
import { printAmount, printResistance, unitName } from '../../base/units/index.js';

/** What framing leaves of the insulation's R, step by step. A figure for the energy report to confirm. */
export function Resistance({ assembly }: { assembly: AssemblyResistance }): VNode {
  return (
    <div class="arithmetic">
      <p class="arithmetic-part">
        {assembly.name}: {printResistance(assembly.effective, 2)} with its framing
      </p>
      <table>
        <caption class="for-the-ear">{assembly.name}, resistance step by step</caption>
        <tbody>
          {assemblySteps(assembly).map(({ what, amount, digits, unit, why }) => (
            <tr class="step">
              <th scope="row">
                {what} <span class="why">{why}</span>
              </th>
              <td class="number">{printAmount(amount, digits)}</td>
              <td class="unit">{unit}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="why">R in {unitName('sq ft h °F / Btu')}, U is 1 / R. The energy report and local code govern.</p>
    </div>
  );
}
