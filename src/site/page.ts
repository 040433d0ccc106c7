import type { VNode } from 'preact';

/** One page of the book before it is written. */
export interface Page {
  /** Path in the book's folder, with `/`: `rooms/great-room.html`. */
  readonly path: string;
  readonly title: string;
  /** Id of the entry in the index that this page belongs to. */
  readonly chapter: string;
  /** Called when the page is written. */
  readonly content: () => VNode;
  /** Rules of style that depend on what the page shows. */
  readonly style?: string;
  /** Classic scripts it needs besides the theme, as paths in the book's folder. */
  readonly scripts?: readonly string[];
}

/** A set of sheets that is written and opened together. */
export interface SheetSet {
  /** What a reader's window says of its first page. */
  readonly title: string;
  readonly index: readonly IndexEntry[];
}

export interface IndexEntry {
  readonly id: string;
  readonly title: string;
  readonly path: string;
  /** The pages of a chapter that has several. */
  readonly pages?: readonly IndexEntry[];
}

const safe = /^(?:[a-z0-9]+(?:-[a-z0-9]+)*\/)*[a-z0-9]+(?:-[a-z0-9]+)*\.(?:css|html|js|svg)$/;

/** Throws when a path could leave the book's folder or would not work as a link on every disk. Paths come from slugs that
 *  the loader has checked: an error here is a mistake in the program. */
export function checkPath(path: string): string {
  if (!safe.test(path)) throw new Error(`not a safe path for a page: ${JSON.stringify(path)}`);
  return path;
}

export { relativeLink } from './paths.js';
