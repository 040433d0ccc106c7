import { cardWords, sheetAddress, type CopyWords, type Handout } from '../../handout/index.js';
import { lineOf, type Line } from './room.js';

/** The foreman's card on the first sheet. Everything is text. */
export interface CardSheet {
  readonly copy: CopyWords;
  /** Where the house's site says whether this sheet is current; empty where the house names none. */
  readonly askAt: string;
  /** Rooms, what must be there first, what is open. */
  readonly parts: readonly CardList[];
  readonly ask: { readonly title: string; readonly people: readonly AskRow[] } | null;
}

interface CardList {
  readonly title: string;
  readonly none: string;
  readonly rows: readonly CardRow[];
  /** `All 12 rooms`; empty where these are all of them. */
  readonly all: string;
  /** Label of the heading under which all of them stand. */
  readonly at: string;
}

interface CardRow {
  /** Number of a room; empty for what has none. */
  readonly mark: string;
  readonly what: string;
  /** A state with its sign; none where it has none. */
  readonly state: Line;
  readonly strong: string;
  readonly text: string;
}

interface AskRow {
  readonly called: string;
  readonly contact: string;
  /** As they are read, and the addresses that they lead to. */
  readonly ways: readonly { readonly text: string; readonly to: string }[];
}

export function cardSheet(handout: Handout): CardSheet {
  const { copy, rooms, first, open, ask } = cardWords(handout);
  return {
    copy,
    askAt: sheetAddress(handout.cover) ?? '',
    parts: [
      {
        ...rooms,
        at: 'rooms',
        rows: rooms.rows.map(({ room, day, work }) =>
          row({ mark: room.number, what: room.name, strong: day, text: work }),
        ),
      },
      { ...first, at: 'trades', rows: first.rows.map(({ what, when }) => row({ what, text: when })) },
      {
        ...open,
        at: 'questions',
        rows: open.rows.map(({ question: { status, when }, what, possible }) =>
          row({ what, state: when === '' ? [] : lineOf({ is: 'status', status }), strong: when, text: possible }),
        ),
      },
    ],
    ask: ask
      ? {
          title: ask.title,
          people: ask.people.map(({ called, contact = '', phone, call, mail, write }) => ({
            called,
            contact,
            ways: [
              { text: phone ?? '', to: call ?? '' },
              { text: mail ?? '', to: write ?? '' },
            ].filter(({ text }) => text !== ''),
          })),
        }
      : null,
  };
}

const row = (of: Partial<CardRow> & Pick<CardRow, 'what'>): CardRow => ({
  mark: '',
  state: [],
  strong: '',
  text: '',
  ...of,
});
