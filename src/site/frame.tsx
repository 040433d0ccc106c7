import type { VNode } from 'preact';
import type { Page } from './page.js';
import { pagePaths } from './paths.js';
import { useLink, useSheet } from './sheet-context.js';
import { TitleBlock } from './parts/title-block.js';

/** A whole page: head, sheet index, the sheet itself and its title block. */
export function Frame({ page }: { page: Page }): VNode {
  const { view, set } = useSheet();
  const { book } = view;
  const link = useLink();
  const title = page.path === pagePaths.start ? set.title : `${page.title} – ${book.house.name}`;
  const searchable = set.index.some((entry) => entry.path === pagePaths.search);
  return (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <title>{title}</title>
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <meta name="robots" content="noindex" />
        <link rel="icon" href="data:," />
        {styles.map((style) => (
          <link rel="stylesheet" href={link(`assets/${style}`)} />
        ))}
        {page.style !== undefined && <style dangerouslySetInnerHTML={{ __html: page.style }} />}
        <script src={link('assets/theme.js')} />
        {page.scripts?.map((script) => (
          <script src={link(script)} defer />
        ))}
      </head>
      <body>
        <a class="skip" href="#sheet">
          Skip to the sheet
        </a>
        <header class="top">
          <p class="top-house">
            <a href={link(pagePaths.start)}>{book.house.name}</a>
            <span class="top-job">Job {book.house.number}</span>
          </p>
          <div class="top-tools">
            {searchable && (
              <a class="tool" href={link(pagePaths.search)} data-search-link="">
                Search
              </a>
            )}
            <button class="tool" type="button" data-theme-button="" hidden>
              <span data-theme-name="">Dark</span>
              <span class="wide-only"> sheet</span>
            </button>
            <button
              class="tool tool-index"
              type="button"
              data-index-button=""
              aria-expanded="false"
              aria-controls="sheet-index"
              hidden
            >
              Sheets
            </button>
          </div>
        </header>
        <nav id="sheet-index" class="index" aria-label="Sheets">
          <ol>
            {set.index.map((chapter) => (
              <li>
                <a href={link(chapter.path)} aria-current={current(chapter.id, chapter.path, page)}>
                  <span class="index-number">{chapter.sheet}</span> {chapter.title}
                </a>
              </li>
            ))}
          </ol>
        </nav>
        <main id="sheet" class={`sheet sheet-${page.chapter}`} tabIndex={-1}>
          {page.content()}
        </main>
        <TitleBlock title={page.title} sheet={page.sheet} />
      </body>
    </html>
  );
}

/** In the order of the cascade. */
const styles = [
  'type.css',
  'sheet.css',
  'table.css',
  'parts.css',
  'choice.css',
  'caution.css',
  'compare.css',
  'side.css',
  'drawn.css',
  'key-plan.css',
  'start.css',
  'pages.css',
  'print.css',
] as const;

function current(id: string, path: string, page: Page): 'page' | 'true' | undefined {
  if (path === page.path) return 'page';
  return id === page.chapter ? 'true' : undefined;
}
