import { render } from 'preact-render-to-string';
import { inLocale } from '../base/units/index.js';
import { bookSet } from './chapters.js';
import { Frame } from './frame.js';
import type { Page, SheetSet } from './page.js';
import { SheetProvider, type DeskOf, type SheetContext } from './sheet-context.js';
import { explainTerms, pageTerms } from './terms.js';
import type { View } from './view.js';

/** A page as a whole HTML document, of the book if no other set is named. */
export function renderPage(
  page: Page,
  view: View,
  highlight: SheetContext['highlight'],
  set: SheetSet = bookSet(view),
  desk?: DeskOf,
): string {
  const html = inLocale(view.book.house, () =>
    render(
      <SheetProvider value={{ view, set, path: page.path, highlight, ...(desk && { desk: desk(page) }) }}>
        <Frame page={page} />
      </SheetProvider>,
    ),
  );
  return `<!DOCTYPE html>\n${explainTerms(html, pageTerms())}\n`;
}
