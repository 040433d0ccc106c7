import type { ComponentChildren, VNode } from 'preact';
import { isLong, RowOpener } from '../../write/index.js';

interface Column<Row> {
  readonly head: ComponentChildren;
  readonly cell: (row: Row, index: number) => ComponentChildren;
  /** Numbers stand right, on their points. */
  readonly numeric?: boolean;
  /** Names the row for those who hear the table. One column of a table. */
  readonly names?: boolean;
  readonly foot?: ComponentChildren;
  /** In the line that a row of a long table is on a small screen, as `brief` of a sheet's column. */
  readonly brief?: boolean;
  readonly class?: string;
}

interface TableProps<Row> {
  readonly id: string;
  readonly caption: ComponentChildren;
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly rowId?: (row: Row) => string;
  readonly rowClass?: (row: Row) => string | undefined;
  /** Rows under a heading of their own, as a second level. */
  readonly groups?: readonly {
    readonly title: ComponentChildren;
    readonly id?: string;
    readonly rows: readonly Row[];
  }[];
  /** Caption for the ear only, where a heading just above says the same. */
  readonly quietCaption?: boolean;
  /** Each cell knows the head of its column, as in `TableHtml`; rows of a long table open by what `called` names them. */
  readonly cards?: boolean;
  readonly called?: (row: Row) => string;
}

/** A table that scrolls inside itself when the screen is narrow: the region can be reached by keyboard and has a name. */
export function DataTable<Row>(props: TableProps<Row>): VNode {
  const { id, caption, columns, rows, groups, quietCaption = false, cards = false } = props;
  const hasFoot = columns.some((column) => column.foot !== undefined);
  return (
    <div class={cards ? 'scroll cards' : 'scroll'} role="region" aria-labelledby={`${id}-caption`} tabIndex={0}>
      <table id={id}>
        <caption id={`${id}-caption`} class={quietCaption ? 'for-the-ear' : undefined}>
          {caption}
        </caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th scope="col" class={cellClass(column)}>
                {column.head}
              </th>
            ))}
          </tr>
        </thead>
        {groups
          ? groups.map((group) => (
              <tbody>
                <tr class="group">
                  <th scope="rowgroup" colSpan={columns.length} id={group.id}>
                    {group.title}
                  </th>
                </tr>
                {group.rows.map((row, index) => renderRow(props, row, index))}
              </tbody>
            ))
          : rows.length > 0 && <tbody>{rows.map((row, index) => renderRow(props, row, index))}</tbody>}
        {hasFoot && (
          <tfoot>
            <tr>
              {columns.map((column, index) =>
                index === 0 ? (
                  <th scope="row" class={cellClass(column)}>
                    {column.foot}
                  </th>
                ) : (
                  <td class={cellClass(column)}>{column.foot}</td>
                ),
              )}
            </tr>
          </tfoot>
        )}
      </table>
    </div>
  );
}

function renderRow<Row>(props: TableProps<Row>, row: Row, index: number): VNode {
  const { columns, rows, rowId, rowClass, cards, called } = props;
  const opens = cards === true && called !== undefined && isLong(rows.length);
  return (
    <tr id={rowId?.(row)} class={rowClass?.(row)}>
      {columns.map((column) =>
        column.names ? (
          <th scope="row" class={cellClass(column)}>
            {opens && <RowOpener of={called(row)} />}
            {column.cell(row, index)}
          </th>
        ) : (
          <td
            class={cellClass(column)}
            data-brief={opens && column.brief === true ? '' : undefined}
            data-head={cards && typeof column.head === 'string' ? column.head : undefined}
          >
            {column.cell(row, index)}
          </td>
        ),
      )}
    </tr>
  );
}

function cellClass<Row>(column: Column<Row>): string | undefined {
  const names = [column.numeric ? 'number' : '', column.class ?? ''].filter(Boolean).join(' ');
  return names === '' ? undefined : names;
}
