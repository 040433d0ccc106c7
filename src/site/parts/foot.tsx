import type { VNode } from 'preact';
import { lastIssue } from '../../core/book/index.js';
import { pagePaths } from '../paths.js';
import { useSheet } from '../sheet-context.js';
import { Day } from './figures.js';
import { PageLink } from './link.js';

/** The last line of every page: of which house it is, and as of when. */
export function Foot(): VNode {
  const { view, set } = useSheet();
  const { house, on } = view.book;
  const last = lastIssue(view.book);
  const isBook = set.index.some(({ pages }) => pages?.some(({ path }) => path === pagePaths.numbers));
  return (
    <>
      <p>
        {house.name}, {house.place}, job {house.number}. Computed for <Day day={on} />.{' '}
        {last ? `After issue ${last.number}, ${last.purpose}.` : 'Not issued.'}
      </p>
      {isBook && <PageLink to={pagePaths.numbers}>About the numbers</PageLink>}
      {view.beside.pdf !== undefined && <PageLink to={view.beside.pdf}>The book to print and sign (PDF)</PageLink>}
    </>
  );
}
