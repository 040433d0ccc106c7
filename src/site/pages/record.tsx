import type { VNode } from 'preact';
import type { BookOption } from '../../core/book/index.js';
import type { Source } from '../../core/model/index.js';
import { choiceTitle } from '../../table/index.js';
import { numberedLines, plainLines } from '../record-lines.js';
import { useSheet } from '../sheet-context.js';
import { PageLink, RecordLink, SelectionSource } from '../parts/link.js';
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
        <SharedFacts path={source.path} />
        <FromSets path={source.path} />
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

/** An option's record does not say what it has from its category: where that stands. */
function SharedFacts({ path }: { path: string }): VNode | null {
  const { view } = useSheet();
  const { shared = [] } = view.book.options.find(({ source }) => source === path) ?? {};
  if (shared.length === 0) return null;
  return (
    <p>
      Not written here but in{' '}
      {groupBySource(shared).map(({ source, family, facts }, index) => (
        <>
          {index > 0 && '; in '}
          <RecordLink source={source}>{source}</RecordLink>
          {family === undefined ? ', for all its options' : `, for its family ${family}`}:{' '}
          {facts.map(({ key, line }, place) => (
            <>
              {place > 0 && ', '}
              {sharedWords(key)} (
              <RecordLink source={source} line={line}>
                line {line}
              </RecordLink>
              )
            </>
          ))}
        </>
      ))}
      .
    </p>
  );
}

/** A room's record does not say what it has from finish sets of the house: where that stands. */
function FromSets({ path }: { path: string }): VNode | null {
  const { view } = useSheet();
  const room = view.book.rooms.find(({ source }) => source === path);
  const selections = room ? view.selectionsOf(room).filter(({ finishSet }) => finishSet !== undefined) : [];
  if (selections.length === 0) return null;
  return (
    <>
      <p>Not written here:</p>
      <ul class="plain-list">
        {selections.map((selection) => (
          <li>
            {choiceTitle(selection, view)}. <SelectionSource selection={selection} />
          </li>
        ))}
      </ul>
    </>
  );
}

type SharedFact = NonNullable<BookOption['shared']>[number];

function groupBySource(shared: readonly SharedFact[]) {
  const groups = new Map<string, { source: string; family?: string; facts: SharedFact[] }>();
  for (const fact of shared) {
    const { source, family } = fact;
    const key = `${source} ${family ?? ''}`;
    const group = groups.get(key) ?? { source, ...(family !== undefined && { family }), facts: [] };
    groups.set(key, group);
    group.facts.push(fact);
  }
  return [...groups.values()];
}

/** `specification.general` as people say it. */
function sharedWords(key: string): string {
  return key === 'lead' ? 'lead time' : key.replace('.', ', ');
}
