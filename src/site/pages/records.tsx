import type { VNode } from 'preact';
import { capital } from '../../base/units/index.js';
import type { Source } from '../../core/model/index.js';
import { RecordLink } from '../parts/link.js';
import { counted } from '../parts/words.js';
import { anchorOf } from '../paths.js';
import { useView } from '../sheet-context.js';

/** Every record of the house, by folder. */
export function RecordsPage(): VNode {
  const { sources } = useView().book;
  const folders = new Map<string, Source[]>();
  for (const source of sources) {
    const folder = source.path.split('/').slice(1, -1).join('/');
    folders.set(folder, [...(folders.get(folder) ?? []), source]);
  }
  return (
    <>
      <h1>Records as written</h1>
      <p class="lead">
        Everything in this book comes from {counted(sources.length, 'file')}. What a page says can be checked against
        the file, line by line.
      </p>
      {[...folders].map(([folder, own]) => (
        <section aria-labelledby={anchorOf('folder', folder || 'house')}>
          <h2 id={anchorOf('folder', folder || 'house')}>{folder === '' ? 'House' : capital(folder)}</h2>
          <ul class="record-list">
            {own.map((source) => (
              <li>
                <RecordLink source={source.path}>{source.path.split('/').at(-1)}</RecordLink>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}
