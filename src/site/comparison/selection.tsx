import type { VNode } from 'preact';
import { makerText } from '../../core/fact/index.js';
import { capital } from '../../base/units/index.js';
import {
  aspectWords,
  selectionRows,
  sideWords,
  type SelectionChange,
  type SelectionSide,
} from '../../core/compare/index.js';
import { DataTable } from '../parts/data-table.js';
import { DrawnSwatch } from '../parts/drawing.js';
import { anchorOf } from '../paths.js';
import type { View } from '../view.js';
import type { ComparisonContext } from './context.js';

/** One selection that its room's record changed: both sides in pictures, then what differs. */
export function SelectionChanged({ change, context }: { change: SelectionChange; context: ComparisonContext }): VNode {
  const { comparison, from, to } = context;
  const anchor = anchorOf('change', change.selection);
  const sameProduct = sideWords(change.from) === sideWords(change.to) && change.from?.option === change.to?.option;
  return (
    <article class="choice" id={anchor} aria-labelledby={`${anchor}-title`}>
      <header class="choice-head">
        <h3 id={`${anchor}-title`}>
          {change.placeText} <span class="choice-kind">{change.categoryName}</span>
        </h3>
        <p class="changed-in">
          Changed: {aspectWords(change)} · {change.tradeName}
        </p>
      </header>
      {sameProduct ? (
        <div class="sides">
          <Product label="As before" category={change.category} side={change.to} view={to} />
        </div>
      ) : (
        <div class="sides">
          <Product label={`Was, ${comparison.from.label}`} category={change.category} side={change.from} view={from} />
          <Product label={`Now, ${comparison.to.label}`} category={change.category} side={change.to} view={to} now />
        </div>
      )}
      <DataTable
        id={`${anchor}-rows`}
        caption={`What differs: ${change.placeText}, ${change.categoryName}`}
        quietCaption
        cards
        rows={selectionRows(change)}
        columns={[
          { head: 'What', names: true, cell: ({ label }) => capital(label) },
          { head: 'Was', class: 'text-cell', cell: (row) => row.from },
          { head: 'Now', class: 'text-cell', cell: (row) => row.to },
          { head: 'Difference', class: 'text-cell', cell: (row) => row.difference },
        ]}
      />
    </article>
  );
}

function Product({
  label,
  category,
  side,
  view,
  now = false,
}: {
  label: string;
  category: string;
  side: SelectionSide | undefined;
  view: View;
  now?: boolean;
}): VNode {
  const option = view.option(category, side?.option ?? side?.counted);
  return (
    <div class={now ? 'side side-now' : 'side'}>
      <p class="role">{label}</p>
      {option && side?.state !== 'none' && <DrawnSwatch option={option} />}
      <p class="choice-name">{capital(sideWords(side))}</p>
      {option && side?.option !== undefined && <p class="maker">{makerText(option)}</p>}
    </div>
  );
}
