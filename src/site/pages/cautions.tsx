import type { VNode } from 'preact';
import { cautionRules, cautionWords, countWords, sourceText } from '../../caution/index.js';
import { CautionCard } from '../parts/caution.js';
import { DataTable } from '../parts/data-table.js';
import { PageLink, RoomLink } from '../parts/link.js';
import { anchorOf, cautionPath } from '../paths.js';
import { useView } from '../sheet-context.js';

/** The register: every caution by room, then every rule that looked, also those that saw nothing. */
export function CautionsPage(): VNode {
  const view = useView();
  const { cautions, rooms } = view.book;
  const concerned = rooms.filter(({ slug }) => view.cautionsIn(slug).length > 0);
  return (
    <>
      <h1>{cautionWords.title}</h1>
      <p class="lead">{cautions.length === 0 ? cautionWords.none : cautionWords.lead}</p>
      {cautions.length > 0 && (
        <>
          <p>{countWords(cautions)}.</p>
          <nav class="in-page" aria-label="By room">
            <ul>
              {concerned.map((room) => (
                <li>
                  <a href={`#${anchorOf('room', room.slug)}`}>
                    {room.number} {room.name}, {view.cautionsIn(room.slug).length}
                  </a>
                </li>
              ))}
              <li>
                <a href="#rules-title">{cautionWords.rules}</a>
              </li>
            </ul>
          </nav>
        </>
      )}
      {concerned.map((room) => (
        <section aria-labelledby={anchorOf('room', room.slug)}>
          <h2 id={anchorOf('room', room.slug)}>
            <RoomLink room={room} />
          </h2>
          {view.cautionsIn(room.slug).map((caution) => (
            <CautionCard caution={caution} />
          ))}
        </section>
      ))}
      <section aria-labelledby="rules-title">
        <h2 id="rules-title">{cautionWords.rules}</h2>
        <DataTable
          id="rules"
          caption="Every rule, with what it looks for, its source and what it saw in this house"
          quietCaption
          rows={cautionRules}
          columns={[
            { head: 'Rule', names: true, cell: ({ title }) => title },
            {
              head: 'Looks for',
              class: 'wide-cell',
              cell: ({ limits }) =>
                limits.map(({ what, text }) => (
                  <span class="limit">
                    {what}: {text}
                  </span>
                )),
            },
            { head: 'Source', class: 'wide-cell', cell: ({ source }) => sourceText(source) },
            { head: 'Seen', cell: ({ id }) => <SeenBy rule={id} /> },
          ]}
        />
      </section>
    </>
  );
}

function SeenBy({ rule }: { rule: string }): VNode {
  const view = useView();
  const seen = view.book.cautions.filter((caution) => caution.rule === rule);
  if (seen.length === 0) return <>nothing</>;
  return (
    <>
      {seen.map((caution) => (
        <span class="limit">
          <PageLink to={cautionPath(caution)}>
            {view.roomName(caution.room)}, {caution.placeText.charAt(0).toLowerCase() + caution.placeText.slice(1)}
          </PageLink>
          {caution.accepted && ` (${cautionWords.accepted.toLowerCase()})`}
        </span>
      ))}
    </>
  );
}
