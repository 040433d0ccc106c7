import type { VNode } from 'preact';

/** A number. In a column of numbers (`point`: how many digits its figures have behind the point) the points stand under each other: digits are of
 *  one width, and room is kept for those that this figure lacks. */
export function Figure({ text, point, quiet = false }: { text: string; point?: number; quiet?: boolean }): VNode {
  if (point === undefined) return <span class={quiet ? 'figure quiet' : 'figure'}>{text}</span>;
  const room = roomFor(text, point);
  return (
    <>
      {quiet ? <span class="quiet">{text}</span> : text}
      {room !== '' && <span class="room-for" data-room={room} />}
    </>
  );
}

/** What stands behind the point in other rows and not here, as the zeros that have its width. */
function roomFor(text: string, point: number): string {
  const [, digits] = /\.(\d*)$/u.exec(text) ?? [];
  if (digits !== undefined) return '0'.repeat(Math.max(0, point - digits.length));
  // What goes on behind the point, such as a unit, keeps no column.
  return point === 0 || text.includes('.') ? '' : `.${'0'.repeat(point)}`;
}
