import type { VNode } from 'preact';
import { BlocksHtml } from '../../write/index.js';
import { alternativeSheet } from '../../table/index.js';
import { FilePicture } from '../parts/picture.js';
import { PageLink } from '../parts/link.js';
import { counted } from '../parts/words.js';
import { pictureWords } from '../../draw/index.js';
import { setPictures, type SetPictures } from '../pictures.js';
import { placeLinks } from '../place-links.js';
import { roomPath } from '../paths.js';
import { useSheet, useView } from '../sheet-context.js';

/** The sheet of alternatives, and after it the rooms that they would change to the eye. */
export function AlternativesPage(): VNode {
  const { view, path } = useSheet();
  const { title, blocks } = alternativeSheet(view);
  const rooms = setPictures(view);
  return (
    <>
      <h1>{title}</h1>
      {rooms.length > 0 && (
        <p>
          <a href="#look-heading" class="onward">
            How {counted(rooms.length, 'room')} would look
          </a>
        </p>
      )}
      <BlocksHtml blocks={blocks} links={placeLinks(view, path)} />
      {rooms.length > 0 && <InTheRooms rooms={rooms} />}
    </>
  );
}

function InTheRooms({ rooms }: { rooms: readonly SetPictures[] }): VNode {
  const view = useView();
  return (
    <section aria-labelledby="look-heading">
      <h2 id="look-heading">In the rooms</h2>
      <p class="why">Each room from one view, as decided today and with what the set chooses there. {pictureWords}</p>
      {rooms.map(({ room, today, sets }) => (
        <section class="set-room" aria-labelledby={`look-${room.slug}`}>
          <h3 id={`look-${room.slug}`}>
            <PageLink to={roomPath(room)}>{view.roomTitle(room.slug)}</PageLink>
          </h3>
          <div class="pictures">
            <FilePicture picture={today}>As decided today</FilePicture>
            {sets.map((picture) => (
              <FilePicture picture={picture}>{picture.set.name}</FilePicture>
            ))}
          </div>
        </section>
      ))}
    </section>
  );
}
