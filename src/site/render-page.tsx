import { render } from 'preact-render-to-string';
import { Frame } from './frame.js';
import type { Page } from './page.js';
import { SheetProvider } from './sheet-context.js';
import type { SheetContext } from './sheet-context.js';
import type { View } from './view.js';

/** A page as a whole HTML document. */
export function renderPage(page: Page, view: View, highlight: SheetContext['highlight']): string {
  const html = render(
    <SheetProvider value={{ view, path: page.path, highlight }}>
      <Frame page={page} />
    </SheetProvider>,
  );
  return `<!DOCTYPE html>\n${html}\n`;
}
