import { mayJoin, type Task } from './task.js';

/** Tells whether an off-cut can still serve once the spans before `from` are filled. */
export interface Usefulness {
  isUseful(from: number, length: number, width: number): boolean;
}

/** For each width of course and each place in the order, the least length that a later span of that width, or a narrower
 *  one, can take: the least piece where joints are allowed, else the whole span. */
export function usefulnessOf(task: Task): Usefulness {
  const widths = [...new Set(task.spans.map((span) => span.width))].sort((a, b) => a - b);
  const least = widths.map((width) => leastFrom(task, width));
  return {
    isUseful(from, length, width) {
      if (!task.reuseOffcuts || length <= 0) return false;
      let fits = -1;
      for (let i = 0; i < widths.length && (widths[i] ?? Infinity) <= width; i += 1) fits = i;
      const needed = least[fits]?.[from];
      return needed !== undefined && length >= needed;
    },
  };
}

function leastFrom(task: Task, width: number): readonly number[] {
  const least = new Array<number>(task.spans.length + 1).fill(Infinity);
  for (let i = task.spans.length - 1; i >= 0; i -= 1) {
    const span = task.spans[i];
    if (!span) continue;
    const length = span.end - span.start;
    const own = span.width > width ? Infinity : mayJoin(task, length) ? Math.min(length, task.leastPiece) : length;
    least[i] = Math.min(own, least[i + 1] ?? Infinity);
  }
  return least;
}
