import { printLength } from '../../units/index.js';
import type { Length } from '../../units/index.js';
import type { LayoutSummary } from '../takeoff.js';
import type { Layout } from './layout.js';

/** What a take-off keeps of a layout. With several regions, the narrowest of their first and of their last courses. */
export function summarize(layout: Layout): LayoutSummary {
  const { first, last } = endWidths(layout);
  return {
    courses: layout.courses.length,
    firstCourse: Math.min(...(first.length > 0 ? first : [0])) as Length,
    lastCourse: Math.min(...(last.length > 0 ? last : [0])) as Length,
    stock: layout.stock,
    waste: layout.waste,
  };
}

/** The layout in a sentence: `21 courses; first and last 4 1/8"; buy 18 @ 12', 24 @ 16'; 6.2 % waste`. */
export function layoutWords(layout: Layout): string {
  if (layout.notLaid !== undefined) return `not laid out: ${layout.notLaid}`;
  const { courses, stock, waste, departures } = layout;
  const count = courses.length === 1 ? '1 course' : `${courses.length} courses`;
  const buy = stock.map(({ length, count: boards }) => `${boards} @ ${stockWords(length)}`).join(', ');
  const kept =
    departures.length === 0
      ? ''
      : `; ${departures.length} ${departures.length === 1 ? 'place departs' : 'places depart'} from the rules`;
  return `${count}; ${endWords(layout)}; buy ${buy}; ${(waste * 100).toFixed(1)} % waste${kept}`;
}

function endWords(layout: Layout): string {
  const { first, last } = endWidths(layout);
  const [firsts, lasts] = [range(first), range(last)];
  if (layout.courses.length === 1) return firsts;
  return firsts === lasts ? `first and last ${firsts}` : `first ${firsts}, last ${lasts}`;
}

/** Whole feet as a yard names its lengths: 12', not 12'-0". */
function stockWords(length: Length): string {
  return printLength(length).replace(/-0"$/u, '');
}

function range(widths: readonly Length[]): string {
  const [least, most] = [Math.min(...widths), Math.max(...widths)].map((width) => printLength(width as Length));
  return least === most ? (least ?? '') : `${least} to ${most}`;
}

function endWidths({ courses }: Layout): { first: readonly Length[]; last: readonly Length[] } {
  const first = courses.filter((course) => course.number === 1);
  const last = courses.filter((course, i) => (courses[i + 1]?.number ?? 1) === 1);
  return { first: first.map(({ width }) => width), last: last.map(({ width }) => width) };
}
