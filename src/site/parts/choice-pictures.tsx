import type { VNode } from 'preact';
import type { BookSelection } from '../../core/book/index.js';
import { pictureWords } from '../../draw/index.js';
import { alike, choicePictures } from '../pictures.js';
import { useView } from '../sheet-context.js';
import { FilePicture } from './picture.js';

/** What a place would look like with each option, where that can be seen in a picture of its room. */
export function ChoicePictures({ selection }: { selection: BookSelection }): VNode | null {
  const pictures = choicePictures(selection, useView());
  if (pictures.length === 0) return null;
  const same = alike(pictures).filter((group) => group.length > 1);
  return (
    <section aria-labelledby="look-heading">
      <h2 id="look-heading">In the room</h2>
      <p class="why">From one view; only this choice differs. {pictureWords}</p>
      <div class="pictures">
        {pictures.map((picture) => (
          <FilePicture picture={picture}>{picture.option.name}</FilePicture>
        ))}
      </div>
      {same.map((group) => (
        <p>These cannot be told apart in the drawing: {group.map(({ option }) => option.name).join('; ')}.</p>
      ))}
    </section>
  );
}
