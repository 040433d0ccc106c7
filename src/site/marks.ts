import { counted } from '../base/units/index.js';
import type { Shade, ShadeLayer } from '../draw/index.js';
import { openIn, type BookRoom } from '../core/book/index.js';
import { shownState } from './parts/words.js';
import type { View } from './view.js';

/** What may be asked of the rooms on the key plans, with what is said of each answer. */
export interface Mark {
  readonly id: string;
  readonly label: string;
  readonly shades: readonly { readonly shade: Shade; readonly words: string; readonly rooms: readonly BookRoom[] }[];
  /** What is said where no room has it. */
  readonly none: string;
}

/** Open choices first, so that it is shown first; then trade by trade. */
export function marksOf(view: View): readonly Mark[] {
  const { rooms, trades } = view.book;
  const late = rooms.filter((room) => openIn(room, view) === 'late');
  const due = rooms.filter((room) => openIn(room, view) === 'due-soon');
  const open = rooms.filter((room) => openIn(room, view) === 'open');
  const changed = rooms.filter(({ signed }) => signed && signed.state !== 'signed');
  const [signedRoom] = rooms.flatMap(({ signed }) => signed ?? []);
  return [
    {
      id: 'open',
      label: 'Open choices',
      shades: [
        { shade: 'late', words: 'Open and late', rooms: late },
        { shade: 'due-soon', words: 'Open and due soon', rooms: due },
        { shade: 'open', words: 'Open', rooms: open },
      ],
      none: 'No choice is open.',
    },
    {
      id: 'late',
      label: 'Late',
      shades: [{ shade: 'late', words: 'Past the last day', rooms: late }],
      none: 'No choice is late.',
    },
    ...(signedRoom
      ? [
          {
            id: 'changed',
            label: 'Changed since signing',
            shades: [
              { shade: 'changed' as const, words: `Not as signed in issue ${signedRoom.issue}`, rooms: changed },
            ],
            none: `Every room is as signed in issue ${signedRoom.issue}.`,
          },
        ]
      : []),
    ...trades.flatMap(({ slug, name }): readonly Mark[] => {
      const own = rooms.filter((room) => view.selectionsOf(room).some(({ trade }) => trade === slug));
      if (own.length === 0) return [];
      return [
        {
          id: `trade-${slug}`,
          label: name,
          shades: [{ shade: 'trade', words: `Rooms with work for ${name}`, rooms: own }],
          none: '',
        },
      ];
    }),
  ];
}

export function markClass({ id }: Pick<Mark, 'id'>): string {
  return `mark-${id}`;
}

/** A mark as a layer of a drawing. */
export function markLayer(mark: Mark): ShadeLayer {
  return {
    className: `asked ${markClass(mark)}`,
    rooms: new Map(mark.shades.flatMap(({ shade, rooms }) => rooms.map(({ slug }) => [slug, shade] as const))),
  };
}

/** Shows of all marks the one that is asked for. */
export function markRules(marks: readonly Mark[]): string {
  const shown = marks.map((mark) => `.marks:has(#${markClass(mark)}:checked) .${markClass(mark)}`);
  return `${shown.join(',')}{display:revert}`;
}

/** `101 Great room: 3 choices open, 1 late`. */
export function roomWords(room: BookRoom, view: View): string {
  const late = view.selectionsOf(room).filter((selection) => shownState(selection) === 'late').length;
  const state =
    room.open === 0 ? 'nothing open' : `${counted(room.open, 'choice')} open${late > 0 ? `, ${late} late` : ''}`;
  return `${room.number} ${room.name}: ${state}`;
}
