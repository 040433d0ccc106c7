import type { VNode } from 'preact';
import type { BookSelection } from '../../book/index.js';
import { assemblySteps } from '../../export/index.js';
import type { AssemblyResistance } from '../../takeoff/index.js';
import { printAmount } from '../../units/index.js';
import { useView } from '../sheet-context.js';
import { DataTable } from './data-table.js';
import { SelectionLink } from './link.js';

/** What framing leaves of the insulation's R, step by step. A figure for the energy report to confirm. */
export function Resistance({ assembly }: { assembly: AssemblyResistance }): VNode {
  return (
    <div class="arithmetic">
      <p class="arithmetic-part">
        {assembly.name}: R-{printAmount(assembly.effective, 1)} with its framing
      </p>
      <table>
        <caption class="for-the-ear">{assembly.name}, resistance step by step</caption>
        <tbody>
          {assemblySteps(assembly).map(({ what, amount, unit, why }) => (
            <tr class="step">
              <th scope="row">
                {what} <span class="why">{why}</span>
              </th>
              <td class="number">{printAmount(amount, unit === 'U' ? 4 : 2)}</td>
              <td class="unit">{unit}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="why">R in sq ft h °F / Btu, U is 1 / R. The energy report and local code govern.</p>
    </div>
  );
}

interface Line {
  readonly selection: BookSelection;
  readonly assembly: AssemblyResistance;
}

/** Labelled and effective R of every wall and ceiling that is insulated. */
export function ResistanceTable({
  id,
  selections,
}: {
  id: string;
  selections: readonly BookSelection[];
}): VNode | null {
  const lines = selections.flatMap((selection) =>
    selection.takeoff.flatMap(({ assemblies = [] }) => assemblies.map((assembly): Line => ({ selection, assembly }))),
  );
  if (lines.length === 0) return null;
  return (
    <>
      <DataTable<Line>
        id={id}
        caption="R of the insulation, and with the framing"
        rows={lines}
        columns={[
          {
            head: 'Place',
            names: true,
            cell: ({ selection }) => (
              <SelectionLink selection={selection}>
                <RoomNumber selection={selection} /> {selection.placeText}
              </SelectionLink>
            ),
          },
          { head: 'Assembly', cell: ({ assembly }) => assembly.name },
          { head: 'Insulation', cell: ({ assembly }) => assembly.cavity.fill.what },
          { head: 'Labelled R', numeric: true, cell: ({ assembly }) => printAmount(assembly.labelled, 1) },
          { head: 'Framing, %', numeric: true, cell: ({ assembly }) => printAmount(assembly.framing.share * 100, 1) },
          { head: 'Effective R', numeric: true, cell: ({ assembly }) => printAmount(assembly.effective, 1) },
        ]}
      />
      <p class="why">
        Heat takes both ways, through insulation and framing, each by its share of the area. Step by step on the page of
        each product. The energy report and local code govern.
      </p>
    </>
  );
}

function RoomNumber({ selection }: { selection: BookSelection }): VNode {
  return <>{useView().room(selection.room)?.number}</>;
}
