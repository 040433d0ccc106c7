import type { VNode } from 'preact';
import { BlocksHtml } from '../../write/index.js';
import { alternativeSheet } from '../../table/index.js';
import { FilePicture } from '../parts/picture.js';
import { PageLink } from '../parts/link.js';
import { pictureWords, setPictures } from '../pictures.js';
import { placeLinks } from '../place-links.js';
import { roomPath } from '../paths.js';
import { useSheet } from '../sheet-context.js';

/** The sheet of alternatives, with the rooms that they would change to the eye between what is side by side and each alone. */
export function AlternativesPage(): VNode {
  const { view, path } = useSheet();
  const { title, blocks } = alternativeSheet(view);
  const links = placeLinks(view, path);
  const alone = blocks.findIndex((block) => block.block === 'section' && block.id !== 'side-by-side');
  const at = alone < 0 ? blocks.length : alone;
  return (
    <>
      <h1>{title}</h1>
      <BlocksHtml blocks={blocks.slice(0, at)} links={links} />
      <InTheRooms />
      <BlocksHtml blocks={blocks.slice(at)} links={links} />
    </>
  );
}

function InTheRooms(): VNode | null {
  const { view } = useSheet();
  const rooms = setPictures(view);
  if (rooms.length === 0) return null;
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
