import { render, type VNode } from 'preact';
import { drawnRoom, lookUp, type Book, type BookRoom, type LookUp } from '../core/book/index.js';
import { drawCutaway, roomView, screenPalette, type Cutaway } from '../draw/index.js';
import { inLocale } from '../base/units/index.js';
import { tryFields } from '../try/index.js';
import { DrawnPicture, LookHtml, LookWords } from '../write/index.js';

/** Draws the rooms of a page with what is tried in them. Without anything tried they show again what the page was made with. */
export function roomPictures(page: ParentNode): (book: Book, roomsTried: ReadonlySet<string>) => void {
  const places = Array.from(page.querySelectorAll<HTMLElement>(`[${tryFields.picture}]`), (place) => ({
    place,
    slug: place.getAttribute(tryFields.picture) ?? '',
    part: place.getAttribute(tryFields.part),
    before: Array.from(place.childNodes),
    isDrawn: false,
  }));
  return (book, roomsTried) => {
    const look = lookUp(book);
    // A page that shows the parts of a picture apart has two places for one room: it is drawn once for both.
    const drawn = new Map<string, Cutaway>();
    for (const one of places) {
      const { place, slug, part, before } = one;
      const room = roomsTried.has(slug) ? look.room(slug) : undefined;
      if (!room) {
        if (one.isDrawn) restore(place, before);
        one.isDrawn = false;
        continue;
      }
      if (!one.isDrawn) place.replaceChildren();
      one.isDrawn = true;
      place.hidden = false;
      const picture = drawn.get(slug) ?? draw(room, look);
      drawn.set(slug, picture);
      render(<Part of={picture} part={part} />, place);
    }
  };
}

function draw(room: BookRoom, look: LookUp): Cutaway {
  return inLocale(look.book.house, () =>
    drawCutaway(drawnRoom(room, look), { id: 'look', palette: screenPalette, view: roomView(room) }),
  );
}

function Part({ of, part }: { of: Cutaway; part: string | null }): VNode {
  if (part === 'drawn') return <DrawnPicture drawing={of.drawing} />;
  return (
    <>
      {part === 'words' ? <LookWords {...of} /> : <LookHtml {...of} />}
      <p class="try-mark">With what is tried, which is not decided.</p>
    </>
  );
}

function restore(place: HTMLElement, before: readonly ChildNode[]): void {
  render(null, place);
  place.replaceChildren(...before);
  place.hidden = before.length === 0;
}
