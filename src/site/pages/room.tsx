import { floorArea, uprightFaces } from '../../core/model/index.js';
import type { VNode } from 'preact';
import type { BookRoom, BookSelection } from '../../core/book/index.js';
import {
  capital,
  printAmount,
  printLength,
  printMoney,
  type Cents,
  type Area,
  fromFeet,
  printArea,
  printQuantity,
  shown,
  unitName,
} from '../../base/units/index.js';
import { cautionWords, countWords, type Caution } from '../../core/caution/index.js';
import { SignMark } from '../../write/index.js';
import { drawRoom } from '../drawings.js';
import { CautionCard } from '../parts/caution.js';
import { DataTable } from '../parts/data-table.js';
import { DrawingFigure } from '../parts/drawing.js';
import { Facts } from '../parts/facts.js';
import { AmountCell, AreaText, Len } from '../parts/figures.js';
import { Locator } from '../parts/key-plan.js';
import { PageLink, RecordLink } from '../parts/link.js';
import { RoomPicture } from '../parts/picture.js';
import { Prose } from '../parts/prose.js';
import { RoomLayouts } from '../parts/room-layouts.js';
import { RoomQuantities } from '../parts/room-quantities.js';
import { SelectionCard } from '../parts/selection-card.js';
import { TryRoot } from '../parts/try-place.js';
import { SignedMark } from '../parts/signed-mark.js';
import { counted, shownState } from '../parts/words.js';
import { roomPath, selectionAnchor } from '../paths.js';
import {
  choiceTitle,
  fromOtherSide,
  layoutTables,
  otherSideWords,
  quantityLines,
  wallAsPrinted,
} from '../../table/index.js';
import { placeLinks } from '../place-links.js';
import { useSheet, useView } from '../sheet-context.js';

export function RoomPage({ room }: { room: BookRoom }): VNode {
  const { view, path } = useSheet();
  const selections = view.selectionsOf(room);
  const cautions = view.cautionsIn(room.slug);
  const lines = quantityLines(view, view.selectionsOf(room));
  const open = selections.filter((selection) => selection.state === 'open');
  const decided = selections.filter((selection) => selection.state !== 'open');
  const { plan, ceiling, sections, features, elevations } = drawRoom(room, view);
  return (
    <>
      <div class="room-top">
        <header class="room-head">
          <p class="room-number">
            <span class="number-disc">{room.number}</span> {view.levelName(room.level)}
          </p>
          <h1>{room.name}</h1>
          <p class="room-sum">
            {room.open === 0 ? 'Everything here is decided.' : `${counted(room.open, 'choice')} still open here.`}{' '}
            Finishes {printMoney(room.cost.total)}. {contractWords(room)}
          </p>
          <SignedMark signed={room.signed} />
        </header>
        <Locator room={room} />
      </div>
      <nav class="in-page" aria-label="In this room">
        <ul>
          {open.map((selection) => (
            <li>
              <a href={`#${selectionAnchor(selection)}`}>
                <SignMark of={shownState(selection)} /> {choiceTitle(selection, view)}
              </a>
            </li>
          ))}
          {decided.length > 0 && (
            <li>
              <a href="#decided-title">{counted(decided.length, 'choice')} made</a>
            </li>
          )}
          {cautions.length > 0 && (
            <li>
              <a href="#cautions-title">{countWords(cautions)}</a>
            </li>
          )}
          <li>
            <a href="#walls-title">Walls</a>
          </li>
          <li>
            <a href="#facts-title">Measured</a>
          </li>
        </ul>
      </nav>
      <RoomPicture room={room} />
      <section class="drawings" aria-labelledby="plan-title">
        <h2 id="plan-title">{sections.length > 0 ? 'Plan, ceiling and sections' : 'Plan and ceiling'}</h2>
        <div class="drawing-set">
          <DrawingFigure drawing={plan} />
          <DrawingFigure drawing={ceiling} />
          {sections.map((drawing) => (
            <DrawingFigure drawing={drawing} />
          ))}
        </div>
      </section>
      {room.body.trim() !== '' && (
        <section aria-labelledby="notes-title">
          <h2 id="notes-title">Notes</h2>
          <Prose text={room.body} />
        </section>
      )}
      <Cautions cautions={cautions} />
      <Choices id="open-title" title="Still to decide" selections={open} />
      <Choices id="decided-title" title="Decided" selections={decided} />
      {selections.length === 0 && <p>No finish is recorded here yet.</p>}
      <section class="drawings" aria-labelledby="walls-title">
        <h2 id="walls-title">Walls{features.length > 0 && ' and what stands in the room'}</h2>
        <div class="drawing-set">
          {[...elevations, ...features].map((drawing) => (
            <DrawingFigure drawing={drawing} />
          ))}
        </div>
      </section>
      <RoomFacts room={room} />
      {selections.length > 0 && <RoomQuantities room={room} selections={selections} />}
      <RoomLayouts tables={layoutTables(lines, view)} links={placeLinks(view, path)} />
      <RoomNeighbours room={room} />
      <TryRoot />
    </>
  );
}

function Cautions({ cautions }: { cautions: readonly Caution[] }): VNode | null {
  if (cautions.length === 0) return null;
  return (
    <section aria-labelledby="cautions-title">
      <h2 id="cautions-title">{cautionWords.title}</h2>
      <p class="why">{cautionWords.lead}</p>
      {cautions.map((caution) => (
        <CautionCard caution={caution} />
      ))}
    </section>
  );
}

function Choices({
  id,
  title,
  selections,
}: {
  id: string;
  title: string;
  selections: readonly BookSelection[];
}): VNode | null {
  if (selections.length === 0) return null;
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {selections.map((selection) => (
        <SelectionCard selection={selection} />
      ))}
      <p class="why">Colors on a screen are not the sample. Choose by the sample.</p>
    </section>
  );
}

/** What the room's choices do to the contract, in words. */
function contractWords({ change }: BookRoom): string {
  if (change === 0) return 'The choices here leave the contract as it is.';
  const size = printMoney(Math.abs(change) as Cents);
  return change > 0
    ? `The choices here add ${size} to the contract.`
    : `The choices here take ${size} off the contract.`;
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
        <RecordLink source={room.source}>The record as written: {room.source}</RecordLink>
      </p>
    </section>
  );
}

function RoomNeighbours({ room }: { room: BookRoom }): VNode {
  const { rooms } = useView().book;
  const index = rooms.findIndex((candidate) => candidate.slug === room.slug);
  const [before, after] = [rooms[index - 1], rooms[index + 1]];
  return (
    <nav class="neighbours" aria-label="Rooms before and after">
      {before && (
        <PageLink to={roomPath(before)} class="before">
          <span class="label">Before</span> {before.number} {before.name}
        </PageLink>
      )}
      {after && (
        <PageLink to={roomPath(after)} class="after">
          <span class="label">Next</span> {after.number} {after.name}
        </PageLink>
      )}
    </nav>
  );
}
