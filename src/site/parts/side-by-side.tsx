import { scaleLinear } from 'd3-scale';
import type { ComponentChildren, VNode } from 'preact';
import { numberText } from '../../base/svg/index.js';

/** One fact of each of several things. What is the same for all is said once, across; what differs from the reference
 *  column has a bar at its edge, as a revised line of a specification has. */
export interface SideRow {
  readonly label: string;
  /** One text for each column. */
  readonly cells: readonly string[];
  /** One number for each column, drawn as bars from zero on one scale, where the eye should see how far apart they are. */
  readonly drawn?: readonly number[];
  readonly strong?: boolean;
}

interface SideBySideProps {
  readonly id: string;
  readonly caption: string;
  /** What stands over each column: a picture, and a name. */
  readonly heads: readonly { readonly picture?: VNode; readonly name: ComponentChildren }[];
  /** The column that the others are marked against. */
  readonly reference: number;
  readonly rows: readonly SideRow[];
}

export function SideBySide({ id, caption, heads, reference, rows }: SideBySideProps): VNode {
  return (
    <div class="scroll side-scroll" role="region" aria-labelledby={`${id}-caption`} tabIndex={0}>
      <table class={`side side-${Math.min(heads.length, 5)}`} id={id}>
        <caption id={`${id}-caption`} class="for-the-ear">
          {caption}
        </caption>
        <thead>
          {heads.some(({ picture }) => picture) && (
            <tr class="side-pictures">
              <td />
              {heads.map((head) => (
                <td>{head.picture}</td>
              ))}
            </tr>
          )}
          <tr class="side-names">
            <td />
            {heads.map((head) => (
              <th scope="col">{head.name}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <Row row={row} reference={reference} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Row({ row, reference }: { row: SideRow; reference: number }): VNode {
  const { label, cells, drawn, strong = false } = row;
  const [first] = cells;
  const same = cells.length > 1 && cells.every((cell) => cell === first);
  return (
    <tr class={strong ? 'side-strong' : undefined}>
      <th scope="row">{label}</th>
      {same ? (
        <td class="side-same" colSpan={cells.length}>
          {first} <span class="side-all">the same for all</span>
        </td>
      ) : (
        cells.map((cell, index) => (
          <td class={cell === cells[reference] ? undefined : 'side-differs'}>
            {cell}
            {drawn && <Bar value={drawn[index] ?? 0} among={drawn} />}
          </td>
        ))
      )}
    </tr>
  );
}

/** A figure as a bar from zero, on the scale of its row. The number beside it says the same. */
function Bar({ value, among }: { value: number; among: readonly number[] }): VNode | null {
  const [low, high] = [Math.min(0, ...among), Math.max(0, ...among)];
  if (low === high) return null;
  const x = scaleLinear([low, high], [1, 99]);
  const [from, to] = [Math.min(x(0), x(value)), Math.max(x(0), x(value))];
  const percent = (place: number): string => `${numberText(place, 2)}%`;
  return (
    <svg class="side-bar" aria-hidden="true" focusable="false" width="100%" height="12">
      <line class="side-axis" x1={percent(1)} x2={percent(99)} y1="6" y2="6" />
      <rect
        class={value < 0 ? 'side-less' : 'side-more'}
        x={percent(from)}
        y="2"
        width={percent(to - from)}
        height="8"
      />
      <line class="side-zero" x1={percent(x(0))} x2={percent(x(0))} y1="0" y2="12" />
    </svg>
  );
}
