import type { VNode } from 'preact';
import type { BookOption } from '../../core/book/index.js';
import { photoFile } from '../paths.js';
import { useLink, useView } from '../sheet-context.js';

/** An option as it was photographed; nothing where there is no photograph that may be shown. */
export function PhotoFigure({ option, isSmall = false }: { option: BookOption; isSmall?: boolean }): VNode | null {
  const { photos } = useView().beside;
  const link = useLink();
  const { photo } = option;
  if (!photo || (photos && !photos.has(option.id))) return null;
  const { shows, width, height } = photo;
  return (
    <figure class={isSmall ? 'photo photo-small' : 'photo'}>
      <img src={link(photoFile(option, photo))} alt={shows} width={width} height={height} loading="lazy" />
      <figcaption>Photograph: {shows}</figcaption>
    </figure>
  );
}
