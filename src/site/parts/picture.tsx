import type { ComponentChildren, VNode } from 'preact';
import type { BookRoom } from '../../core/book/index.js';
import { tryFields } from '../../try/index.js';
import { DrawnPicture, LookWords } from '../../write/index.js';
import { drawPicture, type PictureFile } from '../pictures.js';
import { useLink, useView } from '../sheet-context.js';

/** The room as decided today. What comes between the picture and its words stands before the words also while the page arrives,
 *  so that they do not jump. */
export function RoomPicture({ room, children }: { room: BookRoom; children: ComponentChildren }): VNode {
  const picture = drawPicture(room, useView(), { id: 'look' });
  if (picture.keys.length === 0) return <>{children}</>;
  const part = (name: string): Record<string, string> => ({ [tryFields.picture]: room.slug, [tryFields.part]: name });
  return (
    <>
      <div class="look-drawn" {...part('drawn')}>
        <DrawnPicture drawing={picture.drawing} />
      </div>
      {children}
      <div class="look-beside" {...part('words')}>
        <LookWords {...picture} />
      </div>
    </>
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
