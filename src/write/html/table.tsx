import type { VNode } from 'preact';
import {
  nothing,
  plainWords,
  rowsOf,
  type HouseCell,
  type LaidColumn,
  type LaidRow,
  type LaidSum,
  type TableBlock,
  type Width,
} from '../../sheet/index.js';
import { isFigure, pointOf, shownColumns } from '../looks.js';
import { anchorOf } from '../anchor.js';
import { CellHtml, type Links } from './cell.js';
import { isLong, RowOpener } from './row-opener.js';

const widths: Readonly<Record<Width, string | undefined>> = {
  fit: 'narrow',
  short: 'room-cell',
  words: 'type-cell',
  long: 'wide-cell',
};

interface Shown {
  readonly column: LaidColumn;
  readonly beneath: readonly LaidColumn[];
  readonly class: string | undefined;
  /** Of figures: how many digits they have behind the point. */
  readonly point: number | undefined;
}

/** A table that scrolls inside itself when the screen is narrow: the region can be reached by keyboard and has a name.
 *  `quietCaption`: for the ear only, where a heading just above says the same. `cards`: each cell knows the head of its column, so that
 *  a style sheet can set a row as a card where a screen is too narrow for columns; in a long table, as a line that opens to it. */
export function TableHtml({
  table,
  links,
  quietCaption = false,
  within,
  cards = false,
}: {
  table: TableBlock;
  links: Links;
  quietCaption?: boolean;
  /** Id of the heading that it stands under: tables of two sections may have one caption. */
  within?: string | undefined;
  cards?: boolean;
}): VNode {
  const { columns, beneath } = shownColumns(table, 'html');
  const shown = columns.map((column) => ({
    column,
    beneath: beneath(column.key),
    class: classOf(column, beneath(column.key)),
    point: isFigure(column) ? pointOf(table, column.key) : undefined,
  }));
  const opens = cards && isLong(rowsOf(table).length);
  const row = (one: LaidRow<HouseCell>) => (
    <RowHtml table={table} row={one} columns={shown} links={links} cards={cards} opens={opens} />
  );
  return (
    <>
      <div
        class={cards ? 'scroll cards' : 'scroll'}
        role="region"
        aria-labelledby={within === undefined ? `${table.id}-caption` : `${within} ${table.id}-caption`}
        tabIndex={0}
      >
        <table id={table.id}>
          <caption id={`${table.id}-caption`} class={quietCaption ? 'for-the-ear' : undefined}>
            {table.caption}
          </caption>
          <thead>
            <tr>
              {shown.map(({ column, class: name }) => (
                <th scope="col" class={name}>
                  {column.head}
                </th>
              ))}
            </tr>
          </thead>
          {table.groups.map(({ title, why, cell, rows }) => (
            <tbody>
              {title !== undefined && (
                <tr class="group">
                  <th scope="rowgroup" colSpan={shown.length}>
                    {cell ? <CellHtml cell={cell} links={links} /> : title}
                    {why !== undefined && <span class="why"> {why}</span>}
                  </th>
                </tr>
              )}
              {rows.map(row)}
            </tbody>
          ))}
          {table.sums.length > 0 && (
            <tfoot>
              {table.sums.map((sum) => (
                <SumHtml table={table} sum={sum} columns={shown} links={links} />
              ))}
            </tfoot>
          )}
        </table>
      </div>
      {table.notes.map((note) => (
        <p class="why after-table">{note}</p>
      ))}
    </>
  );
}

function RowHtml({
  table,
  row: { id, strong, cells },
  columns,
  links,
  cards,
  opens,
}: {
  table: TableBlock;
  row: LaidRow<HouseCell>;
  columns: readonly Shown[];
  links: Links;
  cards: boolean;
  opens: boolean;
}): VNode {
  const isBrief = ({ column }: Shown): boolean => briefOf(column) !== undefined && says(cells[column.key]);
  // A sum that has nothing to say in a line is not folded into one.
  const folds = opens && (!strong || columns.some(isBrief));
  return (
    <tr id={anchorOf(table.anchor, id)} class={strong ? 'sum' : undefined}>
      {columns.map(({ column, beneath, class: name, point }) => {
        const body = <Stacked cells={cells} column={column} beneath={beneath} links={links} point={point} />;
        return column.key === table.named ? (
          <th scope="row" class={name}>
            {folds && <RowOpener of={plainWords(cells[column.key] ?? { is: 'nothing' })} />}
            {body}
          </th>
        ) : (
          <td
            class={name}
            data-brief={folds && says(cells[column.key]) ? briefOf(column) : undefined}
            data-head={cards ? column.head : undefined}
          >
            {body}
          </td>
        );
      })}
    </tr>
  );
}

const briefOf = ({ brief }: LaidColumn): string | undefined => (brief === true ? '' : brief);

/** In a line a dash says nothing. */
const says = (cell: HouseCell | undefined): boolean => cell !== undefined && plainWords(cell) !== plainWords(nothing);

/** A cell, what stands beneath it in small print, and a drawing beside both. */
function Stacked({
  cells,
  column,
  beneath,
  links,
  point,
}: {
  cells: Readonly<Record<string, HouseCell>>;
  column: LaidColumn;
  beneath: readonly LaidColumn[];
  links: Links;
  point: number | undefined;
}): VNode {
  const own = cells[column.key] ?? { is: 'nothing' };
  const rest = beneath.flatMap(({ key }) => cells[key] ?? []).filter(({ is }) => is !== 'nothing');
  const drawing = rest.find(({ is }) => is === 'swing');
  const small = rest.filter(({ is }) => is !== 'swing');
  const body = (
    <>
      {own.is === 'nothing' && small.length > 0 ? null : <CellHtml cell={own} links={links} point={point} />}
      {small.map((cell) =>
        // A list stands in no line of text.
        cell.is === 'lines' ? (
          <div class="why under">
            <CellHtml cell={cell} links={links} />
          </div>
        ) : (
          <span class="why under">
            <CellHtml cell={cell} links={links} />
          </span>
        ),
      )}
    </>
  );
  if (!drawing) return body;
  return (
    <span class="hand">
      <CellHtml cell={drawing} links={links} />
      <span>{body}</span>
    </span>
  );
}

function SumHtml({
  table,
  sum: { what, why, strong, cells },
  columns,
  links,
}: {
  table: TableBlock;
  sum: LaidSum<HouseCell>;
  columns: readonly Shown[];
  links: Links;
}): VNode {
  return (
    <tr class={strong ? 'sum' : undefined}>
      {columns.map(({ column, class: name, point }) => {
        if (column.key === table.named) {
          return (
            <th scope="row" class={name}>
              {what} {why !== undefined && <span class="why under">{why}</span>}
            </th>
          );
        }
        const cell = cells[column.key];
        return <td class={name}>{cell && <CellHtml cell={cell} links={links} point={point} />}</td>;
      })}
    </tr>
  );
}

function classOf(column: LaidColumn, beneath: readonly LaidColumn[]): string | undefined {
  const names = [
    isFigure(column) ? 'number' : '',
    column.width ? (widths[column.width] ?? '') : '',
    column.kind === 'unit' || column.kind === 'days' ? 'unit' : '',
    beneath.some(({ kind }) => kind === 'swing') ? 'hand-cell' : '',
  ].filter((name) => name !== '');
  return names.length === 0 ? undefined : names.join(' ');
}
