import type { VNode } from 'preact';
import type { Page } from './page.js';
import { pagePaths } from './paths.js';
import { Shell } from './shell.js';
import { useLink, useSheet } from './sheet-context.js';
import { TitleBlock } from './parts/title-block.js';

/** A whole page of a book: head, sheet index, the sheet itself and its title block. */
export function Frame({ page }: { page: Page }): VNode {
  const { view, set, desk } = useSheet();
  const { strip, styles = [], scripts = [] } = desk?.(page) ?? {};
  const { book } = view;
  const searchable = set.index.some((entry) => entry.path === pagePaths.search);
  return (
    <Shell
      title={page.path === pagePaths.start ? set.title : `${page.title} – ${book.house.name}`}
      home={{ name: book.house.name, path: pagePaths.start, beside: `Job ${book.house.number}` }}
      index={set.index}
      of="Sheets"
      current={({ id, path }) => current(id, path, page)}
      link={useLink()}
      sheet={`sheet-${page.chapter}`}
      foot={<TitleBlock title={page.title} sheet={page.sheet} />}
      {...(searchable && { search: pagePaths.search })}
      {...(page.style !== undefined && { style: page.style })}
      styles={styles}
      scripts={[...(page.scripts ?? []), ...scripts]}
      strip={strip}
    >
      {page.content()}
    </Shell>
  );
}

function current(id: string, path: string, page: Page): 'page' | 'true' | undefined {
  if (path === page.path) return 'page';
  return id === page.chapter ? 'true' : undefined;
}
