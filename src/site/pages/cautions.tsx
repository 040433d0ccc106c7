import type { VNode } from 'preact';
import { adoptedWords, cautionWords, countWords } from '../../core/caution/index.js';
import { cautionRules } from '../../table/index.js';
import { TableHtml } from '../../write/index.js';
import { CautionCard } from '../parts/caution.js';
import { RoomLink } from '../parts/link.js';
import { anchorOf } from '../paths.js';
import { placeLinks } from '../place-links.js';
import { useSheet } from '../sheet-context.js';

/** The register: every caution by room, then every rule that looked, also those that saw nothing. */
export function CautionsPage(): VNode {
  const { view, path } = useSheet();
  const { cautions, house, rooms } = view.book;
  const concerned = rooms.filter(({ slug }) => view.cautionsIn(slug).length > 0);
  return (
    <>
      <h1>{cautionWords.title}</h1>
      <p class="lead">{cautions.length === 0 ? cautionWords.none : cautionWords.lead}</p>
      <p>{adoptedWords(house.code)}</p>
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
        <TableHtml table={cautionRules.lay(view)} links={placeLinks(view, path)} quietCaption />
      </section>
    </>
  );
}
