import type { ComponentChildren, VNode } from 'preact';
import type { BookRoom } from '../../core/book/index.js';
import { tryFields } from '../../try/index.js';
import { LookHtml } from '../../write/index.js';
import { drawPicture, type PictureFile } from '../pictures.js';
import { useLink, useView } from '../sheet-context.js';

/** The room as decided today. */
export function RoomPicture({ room }: { room: BookRoom }): VNode | null {
  const picture = drawPicture(room, useView(), { id: 'look' });
  if (picture.keys.length === 0) return null;
  return (
    <div class="look" {...{ [tryFields.picture]: room.slug }}>
      <LookHtml {...picture} />
    </div>
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
