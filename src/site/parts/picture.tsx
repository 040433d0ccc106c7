import type { ComponentChildren, VNode } from 'preact';
import { numberText } from '../../base/svg/index.js';
import type { BookRoom } from '../../core/book/index.js';
import type { Drawing, Key } from '../../draw/index.js';
import { SignMark } from '../../write/index.js';
import { drawPicture, pictureWords, type PictureFile } from '../pictures.js';
import { useLink, useView } from '../sheet-context.js';
import { Svg } from './drawing.js';

/** The room as decided today: numbers in the picture, and beside it what they stand for. */
export function RoomPicture({ room }: { room: BookRoom }): VNode | null {
  const { drawing, keys, unseen } = drawPicture(room, useView(), { id: 'look' });
  if (keys.length === 0) return null;
  const numbered = keys.filter(({ number }) => number !== undefined);
  const others = keys.filter(({ number }) => number === undefined);
  return (
    <section aria-labelledby="look-heading">
      <h2 id="look-heading">As it will look</h2>
      <div class="look">
        <DrawnPicture drawing={drawing} />
        <div class="look-words">
          <Keys keys={numbered} />
          {others.length > 0 && <p>Drawn, with no room for a number:</p>}
          <Keys keys={others} />
          {unseen.length > 0 && (
            <p>Not drawn, since it is on what was taken away, or its place or size is not recorded:</p>
          )}
          <Keys keys={unseen} />
          <p class="why">{pictureWords}</p>
        </div>
      </div>
    </section>
  );
}

/** What numbers stand for. */
export function Keys({ keys }: { keys: readonly Key[] }): VNode | null {
  if (keys.length === 0) return null;
  return (
    <dl class="look-keys">
      {keys.map(({ number, at, finish, isOpen }) => (
        <div>
          <dt>
            {number !== undefined && <span class="look-number">{number}</span>} {at}
          </dt>
          <dd>
            {isOpen && <SignMark of="open" />} {finish}
          </dd>
        </div>
      ))}
    </dl>
  );
}

/** A picture in the page itself, on its card of paper. */
export function DrawnPicture({ drawing, children }: { drawing: Drawing; children?: ComponentChildren }): VNode {
  return (
    <figure class="picture" style={`max-width:${numberText(drawing.width * 1.15)}in`}>
      <div class="picture-card">
        <Svg node={drawing.svg} />
      </div>
      {children !== undefined && <figcaption>{children}</figcaption>}
    </figure>
  );
}

/** A picture from its file. `alt` is empty where its name stands beside it in the same link. */
export function FilePicture({
  picture,
  alt,
  children,
}: {
  picture: PictureFile;
  alt?: '';
  children?: ComponentChildren;
}): VNode {
  const link = useLink();
  const { title, description, width, height } = picture.cutaway.drawing;
  return (
    <figure class="picture">
      <div class="picture-card">
        <img
          src={link(picture.path)}
          alt={alt ?? `${title}. ${description}`}
          width={Math.round(width * 96)}
          height={Math.round(height * 96)}
          loading="lazy"
        />
      </div>
      {children !== undefined && <figcaption>{children}</figcaption>}
    </figure>
  );
}
