import type { VNode } from 'preact';
import { printDay } from '../base/units/index.js';
import type { IndexEntry, Page } from './page.js';
import { pagePaths } from './paths.js';
import { Foot } from './parts/foot.js';
import { Shell } from './shell.js';
import { useLink, useSheet } from './sheet-context.js';

/** A whole page of a book or of a comparison: the line on top, the page itself and its foot. */
export function Frame({ page }: { page: Page }): VNode {
  const { view, set, desk } = useSheet();
  const { strip, styles = [], scripts = [] } = desk ?? {};
  const { book } = view;
  return (
    <Shell
      title={page.path === pagePaths.start ? set.title : `${page.title} – ${book.house.name}`}
      home={{ name: book.house.name, path: view.beside.book ?? pagePaths.start, beside: `as of ${printDay(book.on)}` }}
      index={desk ? [desk.entry, ...set.index] : set.index}
      layout="row"
      of="The book"
      current={(entry) => current(entry, page)}
      link={useLink()}
      sheet={`sheet-${page.chapter}`}
      foot={<Foot />}
      {...(page.style !== undefined && { style: page.style })}
      styles={styles}
      scripts={[...(page.scripts ?? []), ...scripts]}
      strip={strip}
    >
      {page.content()}
    </Shell>
  );
}

/** A chapter of several pages is current on each of them; else the page that an entry leads to is. */
function current({ id, path, pages }: IndexEntry, page: Page): 'page' | 'true' | undefined {
  if (path === page.path && !pages) return 'page';
  return id === page.chapter ? 'true' : undefined;
}
