import type { Links } from '../write/index.js';
import { relativeLink } from './page.js';
import { anchorOf, cautionPath, optionPath, pagePaths, recordPath, roomPath, selectionPath } from './paths.js';
import type { View } from './view.js';

/** Where places of sheets are in the book, as links from one of its pages. */
export function placeLinks(view: View, from: string): Links {
  return ({ to, id, line }) => {
    const path = pathOf(view, to, id, line);
    return path === undefined
      ? undefined
      : relativeLink(from, path.startsWith(`${from}#`) ? path.slice(from.length) : path);
  };
}

function pathOf(view: View, to: Parameters<Links>[0]['to'], id: string, line?: number): string | undefined {
  switch (to) {
    case 'room':
      return view.room(id) && roomPath(id);
    case 'option': {
      const option = view.optionById(id);
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
      return `${pagePaths.allowances}#${anchorOf('allowance', id)}`;
    case 'alternative':
      return `${pagePaths.alternatives}#${anchorOf('alternative', id)}`;
    case 'change-order':
      return `${pagePaths.agreed}#${anchorOf('change', id)}`;
    case 'issue':
      return `${pagePaths.agreed}#${anchorOf('issue', id)}`;
    case 'trade':
      return `${pagePaths.quantities}#${anchorOf('trade', id)}`;
    case 'record':
      return recordPath(id, line);
    case 'page':
      return id;
    case 'category':
    case 'product':
      return undefined;
  }
}
