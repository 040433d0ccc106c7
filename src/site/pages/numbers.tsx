import type { VNode } from 'preact';
import { conventions } from '../../table/index.js';
import { TableHtml } from '../../write/index.js';
import { Prose } from '../parts/prose.js';
import { placeLinks } from '../place-links.js';
import { useSheet } from '../sheet-context.js';

/** Conventions and their sources: how every figure of the book comes about. */
export function NumbersPage(): VNode {
  const { view, path } = useSheet();
  const { book } = view;
  return (
    <>
      <h1>About the numbers</h1>
      <p class="lead">
        Every figure is computed from the records on the day in the title block. Nothing is typed twice.
      </p>
      <section class="reading" aria-labelledby="from-title">
        <h2 id="from-title">From a tape to a total</h2>
        <ol class="chain">
          <li>
            <strong>Measure.</strong> The recorded runs, heights and slopes give true areas and lengths. Nothing is
            rounded here; a sloped ceiling counts its slope, not its shadow.
          </li>
          <li>
            <strong>Take-off.</strong> The category's convention says what is taken off and what is not. Each deduction
            is listed with its reason.
          </li>
          <li>
            <strong>Waste.</strong> The option's waste is added, or the one recorded for the place.
          </li>
          <li>
            <strong>Order.</strong> What all rooms need of one product is added up and rounded up once to whole packs.
          </li>
          <li>
            <strong>Price.</strong> Rate times quantity, rounded {book.money.rounding}: material by what is bought, with
            waste and for each coat; labor once by the net quantity, whatever the waste and the coats. Freight and tax
            follow the contract. The cost is shared back by what each place needs, so that rooms, trades and categories
            add up to the same cent.
          </li>
          <li>
            <strong>Differences.</strong> What another choice would do is found by computing the whole house with it:
            packs, freight, tax, allowance and mark-up included.
          </li>
          <li>
            <strong>Dates.</strong> A choice is due on the earlier of two days: the day the product is needed on site
            less its lead time and review, and the milestone that the choice fixes less review.
          </li>
        </ol>
      </section>
      <section aria-labelledby="conventions-title">
        <h2 id="conventions-title">How each kind of finish is measured</h2>
        <TableHtml table={conventions.lay(view)} links={placeLinks(view, path)} quietCaption />
      </section>
      {book.categories
        .filter((category) => category.body.trim() !== '')
        .map((category) => (
          <section class="reading">
            <h2>{category.name}</h2>
            <Prose text={category.body} />
          </section>
        ))}
      <section class="reading" aria-labelledby="limits-title">
        <h2 id="limits-title">What this book does not say</h2>
        <p>
          It does not say that anything is safe or allowed: local code and a licensed professional do. Quantities are
          for pricing and deciding; the installer measures before ordering. Colors on a screen are not the sample.
        </p>
      </section>
    </>
  );
}
