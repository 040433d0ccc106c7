import type { VNode } from 'preact';
import type { BookRoom, BookSelection } from '../../book/index.js';
import { cutLines, layoutFigures } from '../../export/index.js';
import type { CutLine, LayoutFigures } from '../../export/index.js';
import type { LaidSurface, LayoutSummary } from '../../takeoff/index.js';
import { printLength } from '../../units/index.js';
import { useView } from '../sheet-context.js';
import { DataTable } from './data-table.js';
import { AmountCell } from './figures.js';

interface Laid {
  readonly finish: string;
  readonly selection: BookSelection;
  readonly layout: LayoutSummary;
}

interface LaidFigures extends LayoutFigures {
  readonly laid: Laid;
}

/** Boards and sheets as laid out in a room: what to buy, where courses begin, and the cut lists. */
export function RoomLayouts({
  room,
  selections,
}: {
  room: BookRoom;
  selections: readonly BookSelection[];
}): VNode | null {
  const view = useView();
  const laid = selections.flatMap((selection) =>
    selection.takeoff.flatMap(({ layout }): Laid[] => {
      const finish = view.option(selection.category, selection.counted)?.name ?? selection.category;
      return layout ? [{ finish, selection, layout }] : [];
    }),
  );
  if (laid.length === 0) return null;
  return (
    <section aria-labelledby="laid-title">
      <h2 id="laid-title">Laid out</h2>
      <p>
        Course by course on the true surfaces, cut from the lengths that can be bought, off-cuts used again. What is
        ordered in packs still goes by area and waste; this is the truer count to check it with.
      </p>
      <DataTable<LaidFigures>
        id="laid-table"
        caption={`What to buy for ${room.name}, and the least that any layout could`}
        rows={laid.map((one) => ({ laid: one, ...layoutFigures(one.layout) }))}
        columns={[
          { head: 'Finish', names: true, cell: ({ laid: { finish } }) => finish },
          { head: 'Place', cell: ({ laid: { selection } }) => selection.placeText },
          { head: 'Buy', cell: ({ laid: { layout } }) => <Buy layout={layout} /> },
          { head: 'True waste, %', numeric: true, cell: (row) => <AmountCell amount={row.wastePercent} /> },
          { head: 'Bought, ft', numeric: true, cell: (row) => <AmountCell amount={row.boughtFeet} /> },
          { head: 'Least, ft', numeric: true, cell: (row) => <AmountCell amount={row.leastFeet} /> },
          { head: 'Over it, %', numeric: true, cell: (row) => <AmountCell amount={row.overPercent} /> },
        ]}
      />
      <DataTable<LaidSurface>
        id="courses-table"
        caption="Courses, and the line to snap for the first"
        rows={[]}
        groups={laid.map(({ finish, selection, layout }) => ({
          title: `${finish}, ${selection.placeText}`,
          rows: layout.surfaces,
        }))}
        columns={[
          { head: 'Surface', names: true, cell: ({ name }) => name },
          { head: 'Courses run', cell: ({ run }) => run },
          { head: 'Courses', numeric: true, cell: ({ courses }) => courses },
          { head: 'First', numeric: true, cell: ({ firstCourse }) => printLength(firstCourse) },
          { head: 'Last', numeric: true, cell: ({ lastCourse }) => printLength(lastCourse) },
          { head: 'First course lies at', cell: ({ startsAt }) => startsAt },
        ]}
      />
      {laid.map((one, index) => (
        <CutList laid={one} id={`cuts-${index + 1}`} />
      ))}
    </section>
  );
}

function Buy({ layout }: { layout: LayoutSummary }): VNode {
  return <>{layout.stock.map(({ length, count }) => `${count}\u00a0×\u00a0${printLength(length)}`).join(', ')}</>;
}

function CutList({ laid: { finish, selection, layout }, id }: { laid: Laid; id: string }): VNode {
  const { departures } = layout;
  return (
    <details>
      <summary>
        Cut list: {finish}, {selection.placeText}
      </summary>
      <DataTable<CutLine>
        id={id}
        caption={`${finish}, ${selection.placeText}: what is cut from each length`}
        quietCaption
        rows={cutLines(layout)}
        columns={[
          { head: layout.lay === 'sheets' ? 'Sheet' : 'Board', names: true, cell: ({ from }) => from },
          { head: 'Buy', numeric: true, cell: ({ count }) => count },
          { head: 'Cut into', class: 'rule-cell', cell: ({ pieces }) => pieces.join(', ') },
        ]}
      />
      {departures.length > 0 && <p class="why">Rules that could not be kept: {departures.join('; ')}.</p>}
    </details>
  );
}
