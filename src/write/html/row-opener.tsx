import type { VNode } from 'preact';

/** Fewer rows than these are seen at once as they are. */
const few = 4;

export const isLong = (rows: number): boolean => rows > few;

/** What opens a row of a long table where a row is one line, without a script: a box over that line. Elsewhere it is not shown. */
export function RowOpener({ of }: { of: string }): VNode {
  return <input type="checkbox" class="row-opener" aria-label={`All of ${of}`} />;
}
