import type { ComponentChildren, VNode } from 'preact';
import type { IndexEntry } from './page.js';
import { TopButtons } from './parts/top-buttons.js';

/** What surrounds every page, be it of a book or of the manual. Links lead from the page to a path of its folder. */
interface ShellProps {
  readonly title: string;
  /** What leads to the first page, and what is said beside it. */
  readonly home: { readonly name: string; readonly path: string; readonly beside?: string };
  readonly index: readonly IndexEntry[];
  /** What the index leads through. */
  readonly of: string;
  readonly current: (entry: IndexEntry) => 'page' | 'true' | undefined;
  readonly link: (path: string) => string;
  /** Path of the page that finds words. */
  readonly search?: string;
  readonly style?: string;
  readonly scripts?: readonly string[];
  /** Paths of styles after those that every page has. */
  readonly styles?: readonly string[];
  /** What stands above the sheet. */
  readonly strip?: ComponentChildren;
  /** The class of the sheet. */
  readonly sheet: string;
  /** What stands below it. */
  readonly foot?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** A whole page: head, strip above, index beside, the sheet itself. */
export function Shell(props: ShellProps): VNode {
  const {
    title,
    home,
    index,
    of,
    link,
    search,
    style,
    styles: more = [],
    scripts,
    strip,
    sheet,
    foot,
    children,
  } = props;
  return (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <title>{title}</title>
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <meta name="robots" content="noindex" />
        <link rel="icon" href="data:," />
        {styles.map((file) => (
          <link rel="stylesheet" href={link(`assets/${file}`)} />
        ))}
        {more.map((path) => (
          <link rel="stylesheet" href={link(path)} />
        ))}
        {style !== undefined && <style dangerouslySetInnerHTML={{ __html: style }} />}
        <script src={link('assets/theme.js')} />
        {scripts?.map((script) => (
          <script src={link(script)} defer />
        ))}
      </head>
      <body>
        <a class="skip" href="#sheet">
          Skip to the sheet
        </a>
        <header class="top">
          <p class="top-house">
            <a href={link(home.path)}>{home.name}</a>
            {home.beside !== undefined && <span class="top-job">{home.beside}</span>}
          </p>
          <div class="top-tools">
            {search !== undefined && (
              <a class="tool" href={link(search)} data-search-link="">
                Search
              </a>
            )}
            <TopButtons of={of} theme={<span class="wide-only"> sheet</span>} />
          </div>
        </header>
        <nav id="sheet-index" class="index" aria-label={of}>
          <ol>
            {index.map((entry) => (
              <li>
                <a href={link(entry.path)} aria-current={props.current(entry)}>
                  <span class="index-number">{entry.sheet}</span> {entry.title}
                </a>
              </li>
            ))}
          </ol>
        </nav>
        <main id="sheet" class={`sheet ${sheet}`} tabIndex={-1}>
          {strip}
          {children}
        </main>
        {foot}
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
  'try.css',
  'caution.css',
  'compare.css',
  'side.css',
  'drawn.css',
  'picture.css',
  'key-plan.css',
  'start.css',
  'pages.css',
  'print.css',
] as const;
