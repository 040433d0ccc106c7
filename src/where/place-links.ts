import type { BookSelection, LookUp } from '../core/book/index.js';
import type { Caution } from '../core/caution/index.js';
import type { Links } from '../write/index.js';
import {
  allowancePath,
  anchorOf,
  cautionPath,
  optionPath,
  pagePaths,
  recordPath,
  roomPath,
  selectionPath,
  tradePath,
} from './paths.js';
import { relativeLink } from './relative-link.js';

/** What a book has pages and anchors for. */
interface Known extends Pick<LookUp, 'room' | 'option' | 'selection'> {
  readonly book: { readonly cautions: readonly Pick<Caution, 'id' | 'room'>[] };
  /** Of a selection with options to compare. */
  readonly choicePath: (selection: Pick<BookSelection, 'id'>) => string | undefined;
  /** False: its records are left out. */
  readonly hasRecords?: boolean;
}

/** Where places of sheets are in the book, as links from one of its pages. */
export function placeLinks(view: Known, from: string): Links {
  return ({ to, id, line }) => {
    const path = pathOf(view, to, id, line);
    return path === undefined
      ? undefined
      : relativeLink(from, path.startsWith(`${from}#`) ? path.slice(from.length) : path);
  };
}

function pathOf(view: Known, to: Parameters<Links>[0]['to'], id: string, line?: number): string | undefined {
  switch (to) {
    case 'room':
      return view.room(id) && roomPath(id);
    case 'option': {
      const [category = '', slug] = id.split('/');
      const option = view.option(category, slug);
      return option && optionPath(option);
    }
    case 'selection': {
      const selection = view.selection(id);
      return selection && selectionPath(selection);
    }
    case 'choice': {
      const selection = view.selection(id);
      return selection && (view.choicePath(selection) ?? selectionPath(selection));
    }
    case 'caution': {
      const caution = view.book.cautions.find((one) => one.id === id);
      return caution && cautionPath(caution);
    }
    case 'key':
      return `${pagePaths.finishSchedule}#${anchorOf('key', id)}`;
    case 'remark':
      return `${pagePaths.finishSchedule}#${anchorOf('remark', id)}`;
    case 'opening':
      return `${pagePaths.openings}#${anchorOf('opening', id)}`;
    case 'set':
      return `${pagePaths.openings}#${anchorOf('set', id)}`;
    case 'finding':
      return `${pagePaths.scope}#${anchorOf('finding', id)}`;
    case 'allowance':
      return allowancePath({ id });
    case 'alternative':
      return `${pagePaths.alternatives}#${anchorOf('alternative', id)}`;
    case 'change-order':
      return `${pagePaths.agreed}#${anchorOf('change', id)}`;
    case 'issue':
      return `${pagePaths.agreed}#${anchorOf('issue', id)}`;
    case 'trade':
      return tradePath(id);
    case 'record':
      return view.hasRecords === false ? undefined : recordPath(id, line);
    case 'page':
      return id;
    case 'category':
    case 'product':
      return undefined;
  }
}
