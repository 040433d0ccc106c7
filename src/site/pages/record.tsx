import type { VNode } from 'preact';
import type { Source } from '../../core/model/index.js';
import { numberedLines, plainLines } from '../record-lines.js';
import { useSheet } from '../sheet-context.js';
import { PageLink } from '../parts/link.js';
import { shownBy } from './shown-by.js';

/** Colouring is for reading; a record longer than this is data. */
const longest = 200_000;

/** A record as it is written: YAML front matter and Markdown, in colour, with a number on every line. */
export function RecordPage({ source }: { source: Source }): VNode {
  const { view, highlight } = useSheet();
  const text = source.text.replaceAll('\r\n', '\n');
  const html = text.length > longest ? plainLines(text) : highlight('markdown', text);
  const shown = shownBy(view, source.path);
  return (
    <>
      <header>
        <p class="cover-kind">Record as written</p>
        <h1 class="file-name">{source.path}</h1>
        {shown && (
          <p>
            Shown in <PageLink to={shown.path}>{shown.title}</PageLink>.
          </p>
        )}
      </header>
      <div
        class="record"
        role="region"
        aria-label={`Text of ${source.path}`}
        dangerouslySetInnerHTML={{ __html: numberedLines(html) }}
      />
    </>
  );
}
