import type { VNode } from 'preact';
import type { RecordChange } from '../../core/compare/index.js';
import { anchorOf } from '../paths.js';
import { diffLines, plainLines } from '../record-lines.js';
import { useSheet } from '../sheet-context.js';
import type { ComparisonContext } from './context.js';
import { recordOf } from './place.js';

/** Records that belong to no room that has a page: options, categories, the house. */
export function RecordsChanged({ comparison: { records }, rooms }: ComparisonContext): VNode {
  const withRooms = new Set(rooms.map((room) => recordOf(room, records)));
  const others = records.filter((record) => !withRooms.has(record));
  return (
    <>
      <header>
        <h1>Records</h1>
        <p class="lead">
          {others.length === 0
            ? 'No record outside the rooms differs.'
            : 'The text of the records that belong to no room. A room’s record stands on the room’s page.'}
        </p>
      </header>
      {others.map((record) => (
        <section aria-labelledby={anchorOf('record', record.path)}>
          <h2 id={anchorOf('record', record.path)} class="record-name">
            {record.path}
          </h2>
          <RecordDiff record={record} />
        </section>
      ))}
    </>
  );
}

/** Colouring is for reading; more than this is data. */
const longest = 200_000;

/** What differs in the text of a record. Signs, borders and words say it; colour only helps. */
export function RecordDiff({ record: { path, kind, renamedFrom, diff } }: { record: RecordChange }): VNode {
  const { highlight } = useSheet();
  const head = {
    added: 'A new record.',
    removed: 'The record was taken out.',
    edited: '',
    renamed: `Was ${renamedFrom ?? ''}.`,
  }[kind];
  if (diff === undefined) return <p class="why">{head} Its text was not compared.</p>;
  if (diff === '') return <p class="why">{head} The text is the same.</p>;
  const html = diff.length > longest ? plainLines(diff) : highlight('diff-yaml', diff);
  return (
    <>
      {head !== '' && <p class="why">{head}</p>}
      <div
        class="record"
        role="region"
        aria-label={`What differs in ${path}`}
        dangerouslySetInnerHTML={{ __html: diffLines(html) }}
      />
    </>
  );
}
