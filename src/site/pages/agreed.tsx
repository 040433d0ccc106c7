import type { VNode } from 'preact';
import type { BookChangeOrder, BookIssue } from '../../book/index.js';
import type { ChangeLine } from '../../model/index.js';
import { shortDigest } from '../../signoff/index.js';
import { capital, printDays, printMoney, printMoneyChange, recordNumber } from '../../units/index.js';
import { DataTable } from '../parts/data-table.js';
import { Facts } from '../parts/facts.js';
import { Day, MoneyCell } from '../parts/figures.js';
import { PageLink, RecordLink, RoomLink } from '../parts/link.js';
import { Prose } from '../parts/prose.js';
import { StepTable } from '../parts/step-table.js';
import { anchorOf, pagePaths } from '../paths.js';
import { useView } from '../sheet-context.js';

/** What was agreed: the issued versions with who signed them, and the change orders with what they add up to. */
export function AgreedPage(): VNode {
  const { book, beside } = useView();
  const { issues, changeOrders, money } = book;
  const { current, notCovered } = money.agreed;
  return (
    <>
      <h1>Issues and change orders</h1>
      <p class="lead">
        {issues.length === 0
          ? 'Nothing was issued yet: this book is for looking at, and nobody has agreed to it.'
          : `The last issue is number ${issues.length}.`}{' '}
        The contract stands at {printMoney(current)}
        {notCovered === 0
          ? ', and every change since is covered by a change order.'
          : `; ${printMoneyChange(notCovered)} of change is not covered by a change order.`}
      </p>
      {beside.comparison !== undefined && (
        <p>
          <a href={beside.comparison} class="onward">
            What changed since issue {issues.length}
          </a>
        </p>
      )}
      {issues.length > 0 && (
        <section aria-labelledby="issues-title">
          <h2 id="issues-title">Issues</h2>
          <IssueTable issues={issues} />
          <p class="why">
            A digest is a number made from all that was issued. A copy with the same digest says the same; a copy with
            another is another book.
          </p>
        </section>
      )}
      <section aria-labelledby="agreed-title">
        <h2 id="agreed-title">The contract sum, as it was agreed</h2>
        <StepTable id="agreed" caption="From the contract sum to today by change order" steps={money.agreed.steps} />
        <p>
          <PageLink to={pagePaths.money} class="onward">
            The same way by allowances and choices
          </PageLink>
        </p>
      </section>
      <section aria-labelledby="orders-title">
        <h2 id="orders-title">Change orders</h2>
        {changeOrders.length === 0 ? (
          <p>There is no change order.</p>
        ) : (
          changeOrders.map((order) => <ChangeOrderCard order={order} />)
        )}
      </section>
    </>
  );
}

function IssueTable({ issues }: { issues: readonly BookIssue[] }): VNode {
  return (
    <DataTable
      id="issues"
      caption="Issued versions"
      quietCaption
      rows={issues}
      rowId={(issue) => anchorOf('issue', String(issue.number))}
      columns={[
        { head: 'Issue', names: true, cell: ({ number }) => number },
        { head: 'For', cell: ({ purpose }) => purpose },
        { head: 'Date', cell: ({ date }) => <Day day={date} /> },
        { head: 'Digest', cell: ({ digest }) => <span class="mark">{shortDigest(digest)}</span> },
        { head: 'Signed', cell: (issue) => <Signatures issue={issue} /> },
        { head: 'Record', cell: ({ source }) => <RecordLink source={source}>as written</RecordLink> },
      ]}
    />
  );
}

function Signatures({ issue: { signatures } }: { issue: BookIssue }): VNode {
  if (signatures.length === 0) return <span class="quiet">not signed</span>;
  return (
    <ul class="plain-list">
      {signatures.map(({ role, name, on, how }) => (
        <li>
          {capital(role)}: {name}, <Day day={on} />
          {how === 'hand' && ', by hand'}
        </li>
      ))}
    </ul>
  );
}

const signs: Readonly<Record<BookChangeOrder['state'], string>> = {
  proposed: 'M6 1.500a4.500 4.500 0 1 0 0 9a4.500 4.500 0 1 0 0-9z',
  approved: 'M1.500 6.500l3 3 6-7',
  declined: 'M2 2l8 8M10 2l-8 8',
  void: 'M1 6h10',
};

function ChangeOrderCard({ order }: { order: BookChangeOrder }): VNode {
  const { number, title, state, reason, days, amount, lines, body, source } = order;
  const { beside } = useView();
  const anchor = anchorOf('change', String(number));
  return (
    <article class={`choice change-order change-order-${state}`} id={anchor} aria-labelledby={`${anchor}-title`}>
      <header class="choice-head">
        <h3 id={`${anchor}-title`}>
          {number}. {title}
        </h3>
        <span class="state">
          <svg class="shape" viewBox="0 0 12 12" aria-hidden="true" focusable="false">
            <path d={signs[state]} fill="none" stroke="currentColor" stroke-width="1.6" />
          </svg>{' '}
          {capital(state)}
        </span>
      </header>
      <p>{reason}</p>
      <Facts
        facts={[
          {
            label: state === 'approved' ? 'Added to the contract' : 'Would add',
            value: printMoneyChange(amount, 'always'),
          },
          { label: 'Moves the end of the job by', value: printDays(days) },
          { label: 'Proposed', value: <Day day={order.proposedOn} /> },
          order.decidedOn !== undefined && {
            label: capital(state),
            value: (
              <>
                <Day day={order.decidedOn} />
                {order.decidedBy !== undefined && `, ${order.decidedBy}`}
              </>
            ),
          },
          { label: 'Between', value: `${versionWords(order.from)} and ${versionWords(order.to)}` },
        ]}
      />
      <DataTable
        id={`${anchor}-lines`}
        caption={`Lines of change order ${number}`}
        quietCaption
        rows={lines}
        columns={[
          { head: 'Room', cell: (line) => <LineRoom line={line} /> },
          { head: 'What', names: true, cell: (line) => <LineWords line={line} />, foot: 'Sum' },
          { head: 'Quantity', cell: ({ quantity }) => quantity ?? '' },
          {
            head: 'Amount',
            numeric: true,
            cell: (line) => <MoneyCell cents={line.amount} change />,
            foot: <MoneyCell cents={amount} change />,
          },
        ]}
      />
      {body.trim() !== '' && <Prose text={body} />}
      <p class="choice-source">
        <RecordLink source={source} />
        {beside.changeOrders !== undefined && (
          <>
            {' '}
            <a href={`${beside.changeOrders}${recordNumber(number)}.pdf`}>To print and sign (PDF)</a>
          </>
        )}
      </p>
    </article>
  );
}

function LineRoom({ line }: { line: ChangeLine }): VNode {
  const room = line.room === undefined ? undefined : useView().room(line.room);
  return room ? <RoomLink room={room} /> : <>{line.room ?? ''}</>;
}

function LineWords({ line: { what, from, to } }: { line: ChangeLine }): VNode {
  if (from === undefined && to === undefined) return <>{what}</>;
  return (
    <>
      {what}: {from ?? 'nothing'} → {to ?? 'nothing'}
    </>
  );
}

/** `issue-2` as people say it; a commit by its first digits. */
function versionWords(version: string): string {
  const [, number] = /^issue-(\d+)$/u.exec(version) ?? [];
  return number === undefined ? `version ${version.slice(0, 10)}` : `issue ${number}`;
}
