import { floorArea, uprightFaces } from '../../core/model/index.js';
import type { VNode } from 'preact';
import type { BookRoom, BookSelection } from '../../core/book/index.js';
import {
  capital,
  printAmount,
  printLength,
  type Area,
  fromFeet,
  printArea,
  printQuantity,
  shown,
  unitName,
} from '../../base/units/index.js';
import { Arithmetic } from '../parts/arithmetic.js';
import { CostTable } from '../parts/cost-table.js';
import { DataTable } from '../parts/data-table.js';
import { Facts } from '../parts/facts.js';
import { AmountCell, AreaText, Len } from '../parts/figures.js';
import { PageLink, RecordLink, RoomLink, SelectionLink } from '../parts/link.js';
import { RoomQuantities } from '../parts/room-quantities.js';
import { anchorOf, drawingsPath, figuredAnchor } from '../paths.js';
import { choiceTitle, fromOtherSide, otherSideWords, wallAsPrinted } from '../../table/index.js';
import { useView } from '../sheet-context.js';

/** Every step of a room's figures: for who checks it. */
export function RoomFiguresPage({ room }: { room: BookRoom }): VNode {
  const view = useView();
  const selections = view.selectionsOf(room);
  return (
    <>
      <p class="room-way">
        <RoomLink room={room} /> · <PageLink to={drawingsPath(room)}>Drawings</PageLink>
      </p>
      <h1>{room.name}, figured</h1>
      <RoomFacts room={room} />
      {selections.length > 0 && <RoomQuantities room={room} selections={selections} />}
      <Figured selections={selections} />
    </>
  );
}

/** Choice by choice, from the shape of the room to what is bought and what it costs. */
function Figured({ selections }: { selections: readonly BookSelection[] }): VNode | null {
  const view = useView();
  const figured = selections.filter(({ counted, takeoff }) => counted !== undefined && takeoff.length > 0);
  if (figured.length === 0) return null;
  return (
    <section aria-labelledby="figured-title">
      <h2 id="figured-title">How quantity and cost come about</h2>
      {figured.map((selection) => {
        const option = view.option(selection.category, selection.counted);
        if (!option) return null;
        return (
          <article id={figuredAnchor(selection)} class="figured">
            <h3>
              <SelectionLink selection={selection}>{choiceTitle(selection, view)}</SelectionLink>: {option.name}
              {selection.state === 'open' && ', the standard'}
            </h3>
            <div class="workings">
              <Arithmetic option={option.id} takeoff={selection.takeoff} />
              <CostTable cost={selection.cost} id={anchorOf('cost', selection.id)} />
            </div>
          </article>
        );
      })}
    </section>
  );
}

function RoomFacts({ room }: { room: BookRoom }): VNode {
  const { measure } = room;
  const faces = uprightFaces(measure);
  const slopes = measure.lowest !== measure.highest;
  const beside = fromOtherSide(room, useView());
  return (
    <section aria-labelledby="facts-title">
      <h2 id="facts-title">Measured</h2>
      <Facts
        facts={[
          { label: 'Floor', value: <AreaText area={floorArea(measure.floor)} /> },
          measure.floor.net !== floorArea(measure.floor) && {
            label: 'Floor less what stands on it',
            value: <AreaText area={measure.floor.net} />,
          },
          { label: 'Ceiling', value: <AreaText area={measure.ceiling.gross} /> },
          { label: 'Perimeter', value: <Len length={measure.perimeter} /> },
          measure.wallRun !== measure.perimeter && {
            label: 'Of it with walls',
            value: <Len length={measure.wallRun} />,
          },
          slopes
            ? { label: 'Height, lowest', value: <Len length={measure.lowest} /> }
            : { label: 'Height', value: <Len length={measure.highest} /> },
          slopes && { label: 'Height, highest', value: <Len length={measure.highest} /> },
          beside.length > 0 && { label: 'Insulated for sound', value: otherSideWords(beside) },
          { label: 'Volume', value: printQuantity(measure.volume, 'cu ft', 0) },
          slopes && {
            label: `Floor under ${printLength(fromFeet(7))} or more`,
            value: <AreaText area={measure.headroom.sevenFeet} />,
          },
        ]}
      />
      <DataTable
        id="walls-table"
        caption="Walls, as seen from inside"
        rows={measure.walls.map(wallAsPrinted)}
        columns={[
          { head: 'Wall', names: true, cell: (wall) => capital(wall.name) },
          { head: 'Run', numeric: true, cell: (wall) => printLength(wall.run) },
          {
            head: `Gross, ${unitName('sq ft')}`,
            numeric: true,
            cell: (wall) =>
              wall.openTo === undefined ? <AmountCell amount={wall.printed} digits={wall.digits} /> : '–',
          },
          {
            head: 'Taken off',
            cell: (wall) =>
              wall.openTo === undefined
                ? wall.deductions
                    .map((deduction) => `${deduction.what} ${printAmount(deduction.printed, wall.digits)}`)
                    .join(', ') || 'nothing'
                : 'open, no wall',
          },
          {
            head: `Net, ${unitName('sq ft')}`,
            numeric: true,
            cell: (wall) => (wall.openTo === undefined ? <AmountCell amount={wall.rest} digits={wall.digits} /> : '–'),
          },
        ]}
      />
      {faces.length > 0 && (
        <DataTable
          id="steps-table"
          caption="Upright faces, in no area of floor, ceiling and walls"
          rows={faces}
          columns={[
            { head: 'Face', names: true, cell: (step) => step.name },
            {
              head: `Net, ${unitName('sq ft')}`,
              numeric: true,
              cell: (step) => <AmountCell {...shown(step.net, 'sq ft')} />,
            },
          ]}
        />
      )}
      {measure.features.length > 0 && (
        <>
          <h3>In the room</h3>
          {measure.features.map((feature) => (
            <div class="feature">
              <h4>{feature.name}</h4>
              <Facts
                facts={[
                  ...feature.facts.map((fact) => ({ label: fact.label, value: fact.text })),
                  ...feature.faces.map((face) => ({ label: face.name, value: printArea(face.net as Area) })),
                  ...feature.runs.map((run) => ({ label: run.name, value: printLength(run.length) })),
                ]}
              />
            </div>
          ))}
        </>
      )}
      <p class="choice-source">
        <RecordLink source={room.source} />
      </p>
    </section>
  );
}
