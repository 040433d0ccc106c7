import type { VNode } from 'preact';
import { lastIssue } from '../../core/book/index.js';
import { useView } from '../sheet-context.js';
import { Day } from './figures.js';

/** What stands in the corner of every sheet of a set of drawings. */
export function TitleBlock({ title, sheet }: { title: string; sheet: string }): VNode {
  const { book } = useView();
  const last = lastIssue(book);
  return (
    <footer class="title-block">
      <h2 class="for-the-ear">Title block</h2>
      <dl>
        <div class="tb-house">
          <dt>House</dt>
          <dd>{book.house.name}</dd>
        </div>
        <div class="tb-place">
          <dt>Place</dt>
          <dd>{book.house.place}</dd>
        </div>
        <div class="tb-job">
          <dt>Job</dt>
          <dd>{book.house.number}</dd>
        </div>
        <div class="tb-date">
          <dt>Computed for</dt>
          <dd>
            <Day day={book.on} />
          </dd>
        </div>
        <div class="tb-issue">
          <dt>Issue</dt>
          <dd>{last ? `After issue ${last.number}, ${last.purpose}` : 'Not issued'}</dd>
        </div>
        <div class="tb-title">
          <dt>Sheet</dt>
          <dd>{title}</dd>
        </div>
        <div class="tb-number">
          <dt>Sheet no.</dt>
          <dd>{sheet}</dd>
        </div>
      </dl>
    </footer>
  );
}
