import type { VNode } from 'preact';
import {
  adoptedWords,
  cautionRules as ruleBook,
  cautionWords,
  countWords,
  type Caution,
} from '../../core/caution/index.js';
import { counted, joinWords } from '../../base/units/index.js';
import { cautionRules } from '../../table/index.js';
import { TableHtml } from '../../write/index.js';
import { CautionCard } from '../parts/caution.js';
import { PageLink } from '../parts/link.js';
import { cautionPath } from '../paths.js';
import { placeLinks } from '../place-links.js';
import { useSheet } from '../sheet-context.js';

/** More cautions than these are folded by their kind, so that the page is an overview first. */
const mostUnfolded = 4;

/** The register: how many cautions, of which kinds and in which rooms; each kind unfolds to its cautions. Then every rule that looked, also
 *  those that saw nothing. */
export function CautionsPage(): VNode {
  const { view, path } = useSheet();
  const { cautions, house } = view.book;
  const kinds = ruleBook
    .map(({ id }) => cautions.filter(({ rule }) => rule === id))
    .filter((of) => of.length > 0)
    .sort((a, b) => b.length - a.length);
  const quiet = ruleBook.filter(({ id }) => cautions.every(({ rule }) => rule !== id)).length;
  return (
    <>
      <h1>{cautionWords.title}</h1>
      {cautions.length > 0 && <p class="lead">{countWords(cautions)}.</p>}
      <p>{cautions.length === 0 ? cautionWords.none : cautionWords.lead}</p>
      <p>{adoptedWords(house.code)}</p>
      {cautions.length > 0 && (
        <section aria-labelledby="rooms-title">
          <h2 id="rooms-title">By room</h2>
          <RoomsConcerned />
        </section>
      )}
      {cautions.length > 0 && (
        <section aria-labelledby="kinds-title">
          <h2 id="kinds-title">By kind</h2>
          {kinds.map((of) => (
            <Kind cautions={of} open={cautions.length <= mostUnfolded} />
          ))}
        </section>
      )}
      <section aria-labelledby="rules-title">
        <h2 id="rules-title">{cautionWords.rules}</h2>
        <p>
          {counted(ruleBook.length, 'rule')} looked at this house, and {quiet} of them saw nothing.
        </p>
        <details>
          <summary>Every rule: what it looks for, its source, what it saw</summary>
          <TableHtml table={cautionRules.lay(view)} links={placeLinks(view, path)} quietCaption />
        </details>
      </section>
    </>
  );
}

/** Each room with how many there are, and the way to the first of them on its own page. */
function RoomsConcerned(): VNode {
  const { view } = useSheet();
  return (
    <nav class="in-page" aria-labelledby="rooms-title">
      <ul>
        {view.book.rooms.map((room) => {
          const [first, ...more] = view.cautionsIn(room.slug);
          return (
            first && (
              <li>
                <PageLink to={cautionPath(first)}>
                  {room.number} {room.name}, {1 + more.length}
                </PageLink>
              </li>
            )
          );
        })}
      </ul>
    </nav>
  );
}

/** What one rule saw: of what kind, how many and in which rooms before anything is unfolded. */
function Kind({ cautions, open }: { cautions: readonly Caution[]; open: boolean }): VNode | null {
  const { view } = useSheet();
  const [first] = cautions;
  if (!first) return null;
  const rooms = [...new Set(cautions.map(({ room }) => view.roomName(room)))];
  return (
    <details class="caution-kind" open={open}>
      <summary>
        <span>
          <strong>{first.title}</strong> {countWords(cautions)}: {joinWords(rooms)}
        </span>
      </summary>
      {cautions.map((caution) => (
        <CautionCard caution={caution} room={view.roomName(caution.room)} />
      ))}
    </details>
  );
}
