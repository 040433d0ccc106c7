import type { VNode } from 'preact';
import type { BookChangeOrder } from '../../core/book/index.js';
import { agreedSections, changeOrderBlocks } from '../../table/index.js';
import { capital, printMoney, printMoneyChange, recordNumber } from '../../base/units/index.js';
import { BlocksHtml } from '../../write/index.js';
import { RecordLink } from '../parts/link.js';
import { PrintedSheetLine } from '../parts/printed-sheet.js';
import { Prose } from '../parts/prose.js';
import { anchorOf } from '../paths.js';
import { placeLinks } from '../place-links.js';
import { useSheet } from '../sheet-context.js';

/** What was agreed: the issued versions with who signed them, and the change orders with what they add up to. */
export function AgreedPage(): VNode {
  const { view, path } = useSheet();
  const { book, beside } = view;
  const { issues, changeOrders, money } = book;
  const { current, notCovered } = money.agreed;
  return (
    <>
      <PrintedSheetLine />
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
      <BlocksHtml blocks={agreedSections(view)} links={placeLinks(view, path)} />
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

const signs: Readonly<Record<BookChangeOrder['state'], string>> = {
  proposed: 'M6 1.500a4.500 4.500 0 1 0 0 9a4.500 4.500 0 1 0 0-9z',
  approved: 'M1.500 6.500l3 3 6-7',
  declined: 'M2 2l8 8M10 2l-8 8',
  void: 'M1 6h10',
};

function ChangeOrderCard({ order }: { order: BookChangeOrder }): VNode {
  const { number, title, state, reason, body, source } = order;
  const { view, path } = useSheet();
  const { beside } = view;
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
      <BlocksHtml blocks={changeOrderBlocks(order, view)} links={placeLinks(view, path)} level={4} />
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
