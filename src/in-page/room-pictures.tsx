import { render } from 'preact';
import { drawnRoom, lookUp, type Book } from '../core/book/index.js';
import { drawCutaway, roomView, screenPalette } from '../draw/index.js';
import { inLocale } from '../base/units/index.js';
import { tryFields } from '../try/index.js';
import { LookHtml } from '../write/index.js';

/** Draws the rooms of a page with what is tried in them. Without anything tried they show again what the page was made with. */
export function roomPictures(page: ParentNode): (book: Book, roomsTried: ReadonlySet<string>) => void {
  const places = Array.from(page.querySelectorAll<HTMLElement>(`[${tryFields.picture}]`), (place) => ({
    place,
    slug: place.getAttribute(tryFields.picture) ?? '',
    before: Array.from(place.childNodes),
    isDrawn: false,
  }));
  return (book, roomsTried) => {
    const look = lookUp(book);
    for (const one of places) {
      const { place, slug, before } = one;
      const room = roomsTried.has(slug) ? look.room(slug) : undefined;
      if (!room) {
        if (one.isDrawn) restore(place, before);
        one.isDrawn = false;
        continue;
      }
      if (!one.isDrawn) place.replaceChildren();
      one.isDrawn = true;
      place.hidden = false;
      const picture = inLocale(book.house, () =>
        drawCutaway(drawnRoom(room, look), { id: 'look', palette: screenPalette, view: roomView(room) }),
      );
      render(<LookHtml {...picture} />, place);
    }
  };
}

function restore(place: HTMLElement, before: readonly ChildNode[]): void {
  render(null, place);
  place.replaceChildren(...before);
  place.hidden = before.length === 0;
}
