import type { VNode } from 'preact';
import type { Sheet } from '../../sheet/index.js';
import { SheetHtml } from '../../write/index.js';
import { placeLinks } from '../place-links.js';
import { useSheet } from '../sheet-context.js';

/** A page that is a sheet. */
export function SheetPage({ sheet }: { sheet: Sheet }): VNode {
  const { view, path } = useSheet();
  return <SheetHtml sheet={sheet} links={placeLinks(view, path)} cards />;
}
