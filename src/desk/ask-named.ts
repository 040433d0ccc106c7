import type { View } from '../site/index.js';
import { asksToAgree } from './ask-agree.js';
import { askConsider } from './ask-consider.js';
import { askOption, askWalk, asksForNew } from './ask-new.js';
import { askRemark, askRoomNote } from './ask-note.js';
import { asksForPhoto } from './ask-photo.js';
import { askChoice } from './ask-place.js';
import type { Ask } from './ask.js';
import { inLocaleOf, type Standing } from './standing.js';

/** The form with an id, as a page of now would hold it. */
export function askNamed(id: string, standing: Standing): Ask | undefined {
  const { view } = standing;
  return view && inLocaleOf(standing, () => askIn(view, id, standing));
}

function askIn(view: View, id: string, standing: Standing): Ask | undefined {
  const [kind, ...of] = id.split('/');
  const selection = view.book.selections.find((one) => one.id === of.join('/'));
  if (selection && kind === 'choose') return askChoice(selection, standing);
  if (selection && kind === 'consider') return askConsider(selection, standing);
  if (selection && kind === 'remark') return askRemark(selection);
  const room = kind === 'note' ? view.room(of.join('/')) : undefined;
  if (room) return askRoomNote(room, standing);
  const option = kind === 'photo' || kind === 'no-photo' ? view.optionById(of.join('/')) : undefined;
  if (option) return asksForPhoto(option).find((ask) => ask.id === id);
  const category = kind === 'new-option' ? view.category(of.join('/')) : undefined;
  if (category) return askOption(view, category);
  return [...asksForNew(view), askWalk(view), ...asksToAgree(view)].find((ask) => ask.id === id);
}
