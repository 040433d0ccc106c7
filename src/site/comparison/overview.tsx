import type { ComponentChildren, VNode } from 'preact';
import { printWorkingDays } from '../../calendar/index.js';
import {
  draftLines,
  laterWords,
  moneyParts,
  movedByProduct,
  roomPoundsWords,
  roomWords,
  togetherWords,
} from '../../compare/index.js';
import type { Comparison } from '../../compare/index.js';
import { capital, printMoney } from '../../units/index.js';
import type { Cents } from '../../units/index.js';
import { DataTable } from '../parts/data-table.js';
import { Day, MoneyCell } from '../parts/figures.js';
import { PageLink } from '../parts/link.js';
import { counted } from '../parts/words.js';
import type { ComparisonContext } from './context.js';
import { FieldTable } from './field-table.js';
import { Notices } from './notices.js';
import { recordChangePath, roomChangePath } from './place.js';

/** The comparison at a glance: money, days, rooms, and what lies outside the rooms. What did not change is not there. */
export function Overview(context: ComparisonContext): VNode {
  const { comparison } = context;
  const { from, to, money, terms } = comparison;
  return (
    <>
      <header>
        <p class="cover-kind">
          {from.label} → {to.label}
        </p>
        <h1>What changed</h1>
        <p class="lead">
          {differenceWords(money.difference)} It was {printMoney(from.today, 'always')} in {from.label} and is{' '}
          {printMoney(to.today, 'always')} in {to.label}.
        </p>
        <p class="why">
          Both are computed for <Day day={to.on} />, so that only the records differ.
        </p>
      </header>
      <Money comparison={comparison} />
      <Rooms {...context} />
      <Days comparison={comparison} />
      <Notices id="cautions" title="Cautions" notices={comparison.cautions} context={context} />
      <Notices id="scope" title="Scope" notices={comparison.scope} context={context} />
      <Section id="price-book" title="Price book" when={comparison.priceBook.length > 0}>
        <p>What suppliers and the builder changed. It is nobody’s choice.</p>
        <DataTable
          id="price-book-table"
          caption="Options that changed"
          quietCaption
          rows={comparison.priceBook.flatMap(({ name, kind, renamedFrom, fields }) => [
            ...(kind === 'changed' ? [] : [{ name, field: kind, from: renamedFrom ?? '', to: '' }]),
            ...fields.map((field) => ({ name, ...field })),
          ])}
          columns={[
            { head: 'Option', names: true, cell: (row) => row.name },
            { head: 'What', cell: (row) => capital(row.field) },
            { head: 'Was', cell: (row) => row.from },
            { head: 'Now', cell: (row) => row.to },
          ]}
        />
      </Section>
      <Allowances comparison={comparison} />
      <Section id="terms" title="Terms" when={terms.length > 0}>
        <FieldTable id="terms-table" caption="Terms that changed" fields={terms} />
      </Section>
      <Moved comparison={comparison} />
      <Section id="trades" title="Trades to tell" when={comparison.trades.length > 0}>
        <ul class="plain-list">
          {comparison.trades.map(({ name, selections }) => (
            <li>
              {name}: {selections === 0 ? 'a caution or a gap in scope' : counted(selections, 'selection')}
            </li>
          ))}
        </ul>
      </Section>
      <Records {...context} />
    </>
  );
}

function differenceWords(difference: Cents): string {
  if (difference === 0) return 'The total stays as it was.';
  const size = printMoney(Math.abs(difference) as Cents, 'always');
  return difference > 0 ? `The total rises by ${size}.` : `The total falls by ${size}.`;
}

function Section({
  id,
  title,
  when,
  children,
}: {
  id: string;
  title: string;
  when: boolean;
  children: ComponentChildren;
}): VNode | null {
  if (!when) return null;
  return (
    <section aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{title}</h2>
      {children}
    </section>
  );
}

function Money({ comparison }: { comparison: Comparison }): VNode {
  const parts = moneyParts(comparison);
  const note = parts.length === 0 ? undefined : togetherWords(comparison.money.together);
  return (
    <Section id="money" title="Where the difference comes from" when>
      {parts.length === 0 ? (
        <p>Nothing moves the total.</p>
      ) : (
        <DataTable
          id="money-table"
          caption="Parts of the difference"
          quietCaption
          rows={parts}
          columns={[
            { head: 'Part', names: true, cell: ({ what }) => what, foot: 'Difference' },
            {
              head: 'Amount',
              numeric: true,
              cell: ({ amount }) => <MoneyCell cents={amount} change />,
              foot: <MoneyCell cents={comparison.money.difference} change />,
            },
          ]}
        />
      )}
      {note !== undefined && <p class="why">{note}</p>}
    </Section>
  );
}

function Rooms({ rooms, place }: ComparisonContext): VNode | null {
  return (
    <Section id="rooms" title="Rooms" when={rooms.length > 0}>
      <DataTable
        id="rooms-table"
        caption="Rooms that changed"
        quietCaption
        rows={rooms}
        columns={[
          {
            head: 'Room',
            names: true,
            cell: (room) => (
              <PageLink to={roomChangePath(place, room)}>
                <span class="mark">{room.number}</span> {room.name}
              </PageLink>
            ),
          },
          { head: 'What changed', class: 'wide-cell', cell: (room) => capital(roomWords(room)) },
          { head: 'Contract, by choices', numeric: true, cell: (room) => <MoneyCell cents={room.byChoice} change /> },
          { head: 'Cost in place', numeric: true, cell: (room) => <MoneyCell cents={room.difference} change /> },
          { head: 'Weight', class: 'text-cell', cell: roomPoundsWords },
        ]}
      />
    </Section>
  );
}

function Moved({ comparison }: { comparison: Comparison }): VNode | null {
  const products = movedByProduct(comparison.rooms);
  return (
    <Section id="moved" title="Not chosen anew" when={products.length > 0}>
      <p>These places stand as they stood. Prices, terms or packs bought for the whole house move what they cost.</p>
      <DataTable
        id="moved-table"
        caption="Products that cost more or less where nothing was chosen anew"
        quietCaption
        rows={products}
        columns={[
          { head: 'Product', names: true, cell: (row) => row.product },
          { head: 'What', cell: (row) => row.categoryName },
          { head: 'Places', numeric: true, cell: (row) => row.places },
          { head: 'Cost in place', numeric: true, cell: (row) => <MoneyCell cents={row.cost} change /> },
          { head: 'Contract', numeric: true, cell: (row) => <MoneyCell cents={row.contract} change /> },
        ]}
      />
    </Section>
  );
}

function Days({ comparison }: { comparison: Comparison }): VNode | null {
  const { milestones } = comparison;
  const { late } = draftLines(comparison).days;
  return (
    <Section id="days" title="Days" when={milestones.length + late.length > 0}>
      {milestones.length > 0 && (
        <DataTable
          id="milestones-table"
          caption="Milestones that moved"
          quietCaption
          rows={milestones}
          columns={[
            { head: 'Milestone', names: true, cell: (row) => row.name },
            { head: 'Was', cell: (row) => (row.from === undefined ? 'not there' : <Day day={row.from} />) },
            { head: 'Now', cell: (row) => (row.to === undefined ? 'taken out' : <Day day={row.to} />) },
            { head: 'Moves', cell: (row) => (row.days === undefined ? '' : laterWords(row.days)) },
          ]}
        />
      )}
      {late.length > 0 && (
        <ul class="plain-list">
          {late.map(({ what, milestone, days }) => (
            <li>
              {what}: the last day to order is past by {printWorkingDays(days)}. {milestone} waits for it.
            </li>
          ))}
        </ul>
      )}
    </Section>
  );
}

function Allowances({ comparison: { allowances } }: { comparison: Comparison }): VNode | null {
  const fields = allowances.flatMap(({ name, kind, fields: own }) => [
    ...(kind === 'kept'
      ? []
      : [{ field: name, from: kind === 'added' ? 'not there' : 'there', to: kind === 'added' ? 'new' : 'taken out' }]),
    ...own.map((field) => ({ ...field, field: `${name}, ${field.field}` })),
  ]);
  return (
    <Section id="allowances" title="Allowances" when={allowances.length > 0}>
      <DataTable
        id="allowances-table"
        caption="What is drawn, and what it does to the contract"
        quietCaption
        rows={allowances}
        columns={[
          { head: 'Allowance', names: true, cell: (row) => row.name },
          { head: 'Was drawn', numeric: true, cell: (row) => <MoneyCell cents={row.drawn.from} /> },
          { head: 'Now drawn', numeric: true, cell: (row) => <MoneyCell cents={row.drawn.to} /> },
          {
            head: 'Contract, by choices',
            numeric: true,
            cell: (row) => <MoneyCell cents={row.byChoice.total} change />,
          },
          { head: 'Contract', numeric: true, cell: (row) => <MoneyCell cents={row.contract} change /> },
        ]}
      />
      {fields.length > 0 && (
        <FieldTable id="allowance-fields" caption="What their record says otherwise" fields={fields} />
      )}
    </Section>
  );
}

const kindWords = { added: 'New', removed: 'Taken out', edited: 'Edited', renamed: 'Renamed' } as const;

function Records({ comparison: { records }, place, rooms }: ComparisonContext): VNode {
  return (
    <Section id="records" title="Records" when>
      {records.length === 0 ? (
        <p>No record differs.</p>
      ) : (
        <DataTable
          id="records-table"
          caption="Records that changed"
          quietCaption
          rows={records}
          columns={[
            {
              head: 'Record',
              names: true,
              cell: (record) => <PageLink to={recordChangePath(place, record, rooms)}>{record.path}</PageLink>,
            },
            {
              head: 'What',
              cell: ({ kind, renamedFrom }) =>
                renamedFrom === undefined ? kindWords[kind] : `${kindWords[kind]}, was ${renamedFrom}`,
            },
          ]}
        />
      )}
    </Section>
  );
}
