import type { VNode } from 'preact';
import type { BookRoom } from '../../book/index.js';
import { findingWords } from '../../scope/index.js';
import type { BuildUp, BuildUpLayer, ScopeFinding } from '../../scope/index.js';
import { joinWords, lower } from '../../units/index.js';
import { DataTable } from '../parts/data-table.js';
import { RecordLink, RoomLink, SelectionLink } from '../parts/link.js';
import { counted } from '../parts/words.js';
import { anchorOf } from '../paths.js';
import { useView } from '../sheet-context.js';

/** What nobody or two do, then who does what, room by room. */
export function ScopePage(): VNode {
  const { scope, rooms } = useView().book;
  return (
    <>
      <h1>Scope</h1>
      <p class="lead">
        Who supplies and installs each layer of each place, from the framing out. What a finish needs beneath it, what
        trades carry and what rooms must have is written in the records.
      </p>
      <section aria-labelledby="findings-title">
        <h2 id="findings-title">Gaps and overlaps</h2>
        {scope.findings.length === 0 ? (
          <p>None found: every layer that the records ask for has one trade.</p>
        ) : (
          <Findings findings={scope.findings} />
        )}
      </section>
      <section aria-labelledby="layers-title">
        <h2 id="layers-title">Who does what, by room</h2>
        <DataTable<Places>
          id="layers"
          caption="Layers of each place, from the framing out"
          quietCaption
          rows={[]}
          groups={roomGroups(rooms, scope.buildUps)}
          columns={[
            { head: 'Place', names: true, class: 'place-cell', cell: ({ text }) => text },
            { head: 'Layers, and who does each', cell: ({ layers }) => <Layers layers={layers} /> },
          ]}
        />
      </section>
    </>
  );
}

function Findings({ findings }: { findings: readonly ScopeFinding[] }): VNode {
  const view = useView();
  return (
    <DataTable<ScopeFinding>
      id="findings"
      caption={`${counted(findings.length, 'finding')}, the gravest first`}
      rows={findings}
      rowId={({ id }) => anchorOf('finding', id)}
      columns={[
        { head: 'Kind', names: true, cell: ({ kind }) => findingWords[kind] },
        { head: 'Room', class: 'room-cell', cell: ({ room }) => <Room slug={room} /> },
        { head: 'What was found', class: 'wide-cell', cell: ({ what }) => what },
        { head: 'To mend it', class: 'wide-cell', cell: ({ fix }) => fix },
        { head: 'Trades', cell: ({ trades }) => trades.map((trade) => view.tradeName(trade)).join(', ') },
        { head: 'Record', cell: ({ source, line }) => <RecordLink source={source} line={line} /> },
      ]}
    />
  );
}

function Room({ slug }: { slug: string }): VNode {
  const room = useView().room(slug);
  return room ? <RoomLink room={room} /> : <>{slug}</>;
}

interface Group {
  readonly title: VNode;
  readonly rows: readonly Places[];
}

/** Places of a room that have the same layers. */
interface Places {
  readonly text: string;
  readonly layers: readonly BuildUpLayer[];
}

function roomGroups(rooms: readonly BookRoom[], buildUps: readonly BuildUp[]): readonly Group[] {
  const byRoom = new Map<string, Map<string, { names: string[]; layers: readonly BuildUpLayer[] }>>();
  for (const { room, placeText, layers } of buildUps) {
    const alike = byRoom.get(room) ?? new Map<string, { names: string[]; layers: readonly BuildUpLayer[] }>();
    const key = JSON.stringify(layers);
    const found = alike.get(key) ?? { names: [], layers };
    found.names.push(placeText);
    byRoom.set(room, alike.set(key, found));
  }
  return rooms.flatMap((room) => {
    const own = [...(byRoom.get(room.slug)?.values() ?? [])];
    const rows = own.map(({ names, layers }) => ({ text: placesText(names), layers }));
    return rows.length === 0 ? [] : [{ title: <RoomLink room={room} />, rows }];
  });
}

function placesText(names: readonly string[]): string {
  const words = names.map((name, index) => {
    const before = names[index - 1];
    if (before === undefined) return name;
    return kindOf(name) !== '' && kindOf(name) === kindOf(before) ? name.slice(kindOf(name).length + 1) : lower(name);
  });
  return joinWords(words);
}

/** 'Window' of 'Window W01'; nothing where no mark is named. */
function kindOf(name: string): string {
  return /^(.*) [A-Z]+\d+$/.exec(name)?.[1] ?? '';
}

function Layers({ layers }: { layers: readonly BuildUpLayer[] }): VNode {
  return (
    <ol class="layers">
      {layers.map((layer) => (
        <li>
          <LayerName layer={layer} /> <Who layer={layer} />
        </li>
      ))}
    </ol>
  );
}

function LayerName({ layer: { what, selection } }: { layer: BuildUpLayer }): VNode {
  const view = useView();
  const found = selection === undefined ? undefined : view.selection(selection);
  return found ? <SelectionLink selection={found}>{what}</SelectionLink> : <>{what}</>;
}

function Who({ layer: { suppliedBy, installedBy } }: { layer: BuildUpLayer }): VNode {
  const view = useView();
  const name = (who: string) => (who === 'owner' ? 'the owner' : view.tradeName(who));
  if (suppliedBy === undefined && installedBy === undefined) return <strong>nobody</strong>;
  if (suppliedBy === installedBy && suppliedBy !== undefined) return <span class="quiet">{name(suppliedBy)}</span>;
  return (
    <span class="quiet">
      {suppliedBy === undefined ? <strong>nobody</strong> : name(suppliedBy)} supplies,{' '}
      {installedBy === undefined ? <strong>nobody</strong> : name(installedBy)} installs
    </span>
  );
}
