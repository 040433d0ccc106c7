import type { BookSelection } from '../core/book/index.js';

/** Do two selections of one room share a place? `walls` has become each wall; `breast` stands for its faces. */
export function sharePlace(a: BookSelection, b: BookSelection): boolean {
  if (a.room !== b.room) return false;
  const ids = new Set(a.places.map(({ id }) => id));
  return b.places.some(({ id }) => ids.has(id));
}
