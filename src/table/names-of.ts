import type { LookUp } from '../core/book/index.js';
import type { Names } from '../sheet/index.js';

/** The names of a Book that columns may ask for. */
export function namesOf(look: LookUp): Names {
  return {
    title: (room) => (room === 'outside' ? 'Outside' : look.roomTitle(room)),
    number: (room) => look.room(room)?.number ?? room,
    room: (slug) => {
      const room = look.room(slug);
      if (!room) return { number: '', name: slug === 'outside' ? 'Outside' : slug };
      return { number: room.number, name: room.name, place: { to: 'room', id: slug } };
    },
    trade: look.tradeName,
    category: look.categoryName,
    option: (id) => {
      const [category = '', slug] = id.split('/');
      return look.option(category, slug)?.name;
    },
    milestone: look.milestoneName,
    urgency: (id) => {
      const selection = look.selection(id);
      if (selection?.state !== 'open') return undefined;
      const { state } = selection.decision;
      return state === 'late' || state === 'due-soon' ? state : 'open';
    },
  };
}

/** For tables whose rows carry their own names: what is asked for all the same stays its id. */
export const idsAsNames: Names = {
  title: (room) => room,
  number: (room) => room,
  room: (slug) => ({ number: '', name: slug }),
  trade: (slug) => slug,
  category: (slug) => slug,
  option: () => undefined,
  milestone: (id) => id,
  urgency: () => undefined,
};
