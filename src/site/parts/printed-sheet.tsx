import type { VNode } from 'preact';
import { anchorOf } from '../paths.js';
import { printedSheets } from '../printed-sheets.js';
import { useSheet } from '../sheet-context.js';

/** Chooses among the answers. */
export const printedSheetScript = 'assets/printed-sheet.js';

/** Before all else, what becomes of the printed sheet whose code opened the page; nothing where the house has no site, so that no sheet has a code. */
export function PrintedSheetLine(): VNode | null {
  const { view } = useSheet();
  if (view.book.house.site === undefined) return null;
  return (
    <div role="status">
      {printedSheets(view).map(({ asked, state, words, order }) => (
        <p class="standing-sheet" data-asked={asked} data-state={state} hidden>
          {words} {order !== undefined && <a href={`#${anchorOf('change', order)}`}>See it below</a>}
        </p>
      ))}
    </div>
  );
}
