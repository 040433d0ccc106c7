import type { VNode } from 'preact';
import { capital } from '../../units/index.js';
import type { FieldChange } from '../../compare/index.js';
import { DataTable } from '../parts/data-table.js';

/** Facts that read otherwise now. */
export function FieldTable({
  id,
  caption,
  fields,
}: {
  id: string;
  caption: string;
  fields: readonly FieldChange[];
}): VNode {
  return (
    <DataTable
      id={id}
      caption={caption}
      quietCaption
      rows={fields}
      columns={[
        { head: 'What', names: true, cell: ({ field }) => capital(field) },
        { head: 'Was', class: 'text-cell', cell: ({ from }) => from || '–' },
        { head: 'Now', class: 'text-cell', cell: ({ to }) => to || '–' },
      ]}
    />
  );
}
