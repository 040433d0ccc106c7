import type { VNode } from 'preact';
import { lower } from '../../units/index.js';
import type { BookSelection, BookTrade } from '../../book/index.js';
import { DataTable } from '../parts/data-table.js';
import { AmountCell } from '../parts/figures.js';
import { PageLink, RoomLink, SelectionLink } from '../parts/link.js';
import { Phrase, Prose } from '../parts/prose.js';
import { SupplyTable } from '../parts/supply-table.js';
import { ResistanceTable } from '../parts/resistance.js';
import { State } from '../parts/state-mark.js';
import { shownState } from '../parts/words.js';
import { anchorOf, optionPath } from '../paths.js';
import { useView } from '../sheet-context.js';

interface Line {
  readonly selection: BookSelection;
  readonly takeoff: BookSelection['takeoff'][number];
}

/** What each trade measures and installs, with the rule beside every number. */
export function QuantitiesPage(): VNode {
  const view = useView();
  const { trades, categories, selections } = view.book;
  return (
    <>
      <h1>Quantities by trade</h1>
      <p class="lead">
        Net is what is covered. Needed adds coats and waste. The installer confirms on site before ordering.
      </p>
      {trades.map((trade) => {
        const own = categories.filter((category) => category.trade === trade.slug);
        const groups = own.flatMap((category) => {
          const rows = selections
            .filter((selection) => selection.category === category.slug)
            .flatMap((selection) => selection.takeoff.map((takeoff): Line => ({ selection, takeoff })));
          return rows.length === 0
            ? []
            : [
                {
                  title: (
                    <GroupTitle
                      name={category.name}
                      section={category.section}
                      rule={category.measure.words}
                      source={category.measure.source}
                    />
                  ),
                  rows,
                },
              ];
        });
        if (groups.length === 0) return null;
        const id = anchorOf('trade', trade.slug);
        return (
          <section aria-labelledby={id}>
            <h2 id={id}>{trade.name}</h2>
            <TradeScope trade={trade} />
            <DataTable<Line>
              id={`${id}-table`}
              caption={`Quantities of ${lower(trade.name)}`}
              quietCaption
              rows={[]}
              groups={groups}
              columns={[
                { head: 'Room', names: true, cell: ({ selection }) => <RoomOf selection={selection} /> },
                {
                  head: 'Place',
                  cell: ({ selection }) => <SelectionLink selection={selection}>{selection.placeText}</SelectionLink>,
                },
                { head: 'Finish', cell: (line) => <Finish line={line} /> },
                { head: 'Net', numeric: true, cell: ({ takeoff }) => <AmountCell amount={takeoff.net} /> },
                {
                  head: 'Waste, %',
                  numeric: true,
                  cell: ({ takeoff }) => <AmountCell amount={takeoff.waste.percent} />,
                },
                { head: 'Needed', numeric: true, cell: ({ takeoff }) => <AmountCell amount={takeoff.required} /> },
                { head: 'Unit', class: 'unit', cell: ({ takeoff }) => takeoff.unit },
              ]}
            />
            <SupplyTable
              id={`${id}-supplies`}
              title={`Supplies of ${lower(trade.name)}, for the house`}
              supplies={view.book.supplies.filter((supply) => supply.trade === trade.slug)}
            />
            <ResistanceTable
              id={`${id}-resistance`}
              selections={selections.filter((selection) => selection.trade === trade.slug)}
            />
          </section>
        );
      })}
    </>
  );
}

/** What the trade must know, does, and leaves to others, as its record says. */
function TradeScope({ trade }: { trade: BookTrade }): VNode | null {
  const lists = [
    { title: 'Needs to know', lines: trade.needsToKnow },
    { title: 'Does', lines: trade.scopeIn },
    { title: 'Leaves to others', lines: trade.scopeOut },
  ].filter(({ lines }) => lines.length > 0);
  return (
    <>
      <p class="why">
        {trade.contact}. {trade.sections.length > 0 && `Sections ${trade.sections.join(', ')}.`}
      </p>
      {lists.length > 0 && (
        <details>
          <summary>What this trade needs to know, does, and leaves to others</summary>
          <div class="workings">
            {lists.map(({ title, lines }) => (
              <div>
                <h3>{title}</h3>
                <ul class="plain-list">
                  {lines.map((line) => (
                    <li>
                      <Phrase text={line} />
                    </li>
                  ))}
                </ul>
              </div>
            ))}
          </div>
          <Prose text={trade.body} />
        </details>
      )}
    </>
  );
}

function GroupTitle({
  name,
  section,
  rule,
  source,
}: {
  name: string;
  section: string;
  rule: string;
  source: string;
}): VNode {
  return (
    <>
      {name} <span class="mark">{section}</span>{' '}
      <span class="why">
        {rule} Source: {source}.
      </span>
    </>
  );
}

function RoomOf({ selection }: { selection: BookSelection }): VNode {
  const room = useView().room(selection.room);
  return room ? <RoomLink room={room} /> : <>{selection.room}</>;
}

function Finish({ line: { selection, takeoff } }: { line: Line }): VNode {
  const option = useView().option(selection.category, selection.counted);
  return (
    <>
      {option && <PageLink to={optionPath(option)}>{option.name}</PageLink>}
      {takeoff.part !== 'main' && `, ${takeoff.part}`}
      {selection.state === 'open' && (
        <>
          {' '}
          <State state={shownState(selection)} />
        </>
      )}
    </>
  );
}
