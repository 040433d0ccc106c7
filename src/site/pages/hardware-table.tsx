import type { VNode } from 'preact';
import type { HardwareSet } from '../../book/index.js';
import { printLength } from '../../units/index.js';
import { DataTable } from '../parts/data-table.js';
import { OptionLink } from '../parts/link.js';
import { OwnerMark } from '../parts/state-mark.js';
import { anchorOf } from '../paths.js';
import { useView } from '../sheet-context.js';

/** What each hardware set holds, and the doors that have it. */
export function HardwareTable({ sets }: { sets: readonly HardwareSet[] }): VNode {
  return (
    <DataTable<HardwareSet>
      id="hardware"
      caption="Hardware sets; a door in brackets has the set as standard for now"
      rows={sets}
      rowId={({ set }) => anchorOf('set', set)}
      columns={[
        { head: 'Set', names: true, class: 'narrow', cell: ({ set }) => <span class="mark">{set}</span> },
        { head: 'Hardware', cell: (set) => <Hardware set={set} /> },
        { head: 'One set holds', class: 'wide-cell', cell: ({ holds }) => holds ?? <span class="quiet">–</span> },
        { head: 'Functions made', cell: ({ functions }) => functions },
        { head: 'Finish', cell: ({ finish }) => finish },
        {
          head: 'Backset',
          numeric: true,
          cell: ({ backset }) => (backset === undefined ? '–' : printLength(backset)),
        },
        { head: 'Doors', class: 'wide-cell', cell: ({ doors }) => <Doors doors={doors} /> },
        { head: 'Sets', numeric: true, cell: ({ doors }) => doors.length },
      ]}
    />
  );
}

function Hardware({ set }: { set: HardwareSet }): VNode {
  const option = useView().optionById(set.option);
  return (
    <>
      {option ? <OptionLink option={option} /> : set.name}
      <div class="quiet">{set.product}</div>
    </>
  );
}

function Doors({ doors }: { doors: HardwareSet['doors'] }): VNode {
  return (
    <>
      {doors.map(({ mark, standing, supply }, index) => (
        <>
          {index > 0 && ', '}
          <a class="mark" href={`#${anchorOf('opening', mark)}`}>
            {standing === 'standard' ? `(${mark})` : mark}
          </a>
          {supply === 'owner-furnished' && (
            <>
              {' '}
              <OwnerMark />
            </>
          )}
        </>
      ))}
    </>
  );
}
