import { createContext, type VNode } from 'preact';
import { useContext } from 'preact/hooks';
import { relativeLink, type IndexEntry, type Page, type SheetSet } from './page.js';
import type { View } from './view.js';

/** What every part of a page may ask for without being handed it. */
export interface SheetContext {
  readonly view: View;
  readonly set: SheetSet;
  /** Path of the page in the book's folder. */
  readonly path: string;
  /** Coloured HTML of a record's text, escaped. */
  readonly highlight: (language: string, text: string) => string;
  /** What the page has besides where the house is worked on rather than read. */
  readonly desk?: Desk;
}

export interface Desk {
  /** Stands above the page. */
  readonly strip: VNode;
  /** Leads to it, before the chapters of the book. */
  readonly entry: IndexEntry;
  /** On the page of a choice: below its options, to write which it is. */
  readonly choice?: VNode;
  /** Paths in the book's folder. */
  readonly styles: readonly string[];
  readonly scripts: readonly string[];
}

/** What is added to a page. */
export type DeskOf = (page: Page) => Desk;

const Context = createContext<SheetContext | undefined>(undefined);

export const SheetProvider = Context.Provider;

export function useSheet(): SheetContext {
  const context = useContext(Context);
  if (!context) throw new Error('a part of a page was rendered outside a page');
  return context;
}

export function useView(): View {
  return useSheet().view;
}

/** Turns a path in the book into a link that works from this page. */
export function useLink(): (to: string) => string {
  const { path } = useSheet();
  return (to) => relativeLink(path, to);
}
