import type { ComponentChildren, VNode } from 'preact';
import { styleFile } from './assets.js';
import type { IndexEntry } from './page.js';
import { LookButton, MenuButton } from './parts/buttons.js';

/** What surrounds every page, be it of a book, of a comparison or of the manual. Links lead from the page to a path of its folder. */
interface ShellProps {
  readonly title: string;
  /** What leads to the first page, and what is said beside it. */
  readonly home: { readonly name: string; readonly path: string; readonly beside?: ComponentChildren };
  /** Empty for a page that stands alone. */
  readonly index: readonly IndexEntry[];
  /** Of the index. A row is for few entries, which may have pages of their own; a column beside the page for many. */
  readonly layout: 'row' | 'column';
  /** What the index leads through. */
  readonly of: string;
  readonly current: (entry: IndexEntry) => 'page' | 'true' | undefined;
  readonly link: (path: string) => string;
  readonly style?: string;
  readonly scripts?: readonly string[];
  /** Paths of styles after those that every page has. */
  readonly styles?: readonly string[];
  /** What stands above the page. */
  readonly strip?: ComponentChildren;
  /** The class of the page. */
  readonly sheet: string;
  /** What stands in the line below it. */
  readonly foot?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** A whole page: one line of words on top, the page itself, a line below it. */
export function Shell(props: ShellProps): VNode {
  const { title, home, index, layout, of, current, link, style, styles = [], scripts, strip, sheet, foot } = props;
  const chapter = index.find((entry) => entry.pages && current(entry) !== undefined);
  const entries = (of: readonly IndexEntry[]): VNode[] =>
    of.map((entry) => (
      <li>
        <a
          href={link(entry.path)}
          aria-current={current(entry)}
          {...(entry.id === 'search' && { 'data-search-link': '' })}
        >
          {entry.title}
        </a>
      </li>
    ));
  return (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <title>{title}</title>
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <meta name="robots" content="noindex" />
        <link rel="icon" href="data:," />
        <link rel="stylesheet" href={link(styleFile)} />
        {styles.map((path) => (
          <link rel="stylesheet" href={link(path)} />
        ))}
        {style !== undefined && <style dangerouslySetInnerHTML={{ __html: style }} />}
        <script src={link('assets/theme.js')} />
        {scripts?.map((script) => (
          <script src={link(script)} defer />
        ))}
      </head>
      <body class={`with-${layout}`}>
        <a class="skip" href="#page">
          Skip to the text
        </a>
        <header class="top">
          <p class="top-house">
            <a href={link(home.path)}>{home.name}</a>
            {home.beside !== undefined && <span class="top-beside">{home.beside}</span>}
          </p>
          {index.length > 0 && (
            <>
              <MenuButton />
              <nav id="index" class="index" aria-label={of}>
                <ol>{entries(index)}</ol>
              </nav>
            </>
          )}
        </header>
        <main id="page" class={`sheet ${sheet}`} tabIndex={-1}>
          {chapter?.pages && (
            <nav class="within" aria-label={chapter.title}>
              <ul>{entries(chapter.pages)}</ul>
            </nav>
          )}
          {strip}
          {props.children}
        </main>
        <footer class="foot">
          {foot}
          <LookButton />
        </footer>
      </body>
    </html>
  );
}
