import { capital, counted, printDay } from '../base/units/index.js';
import type { Handout, HandoutCard, HandoutNext, HandoutPerson, HandoutQuestion } from './handout.js';
import { firstWords, nextWords, standingOf, whomToAsk } from './standing.js';

/** The foreman's card in words, for page and paper alike. */
export interface CardWords {
  readonly copy: CopyWords;
  readonly rooms: CardPart<NextRoomWords>;
  readonly first: CardPart<{ readonly what: string; readonly when: string }>;
  readonly open: CardPart<OpenWords>;
  /** Undefined where nobody is named whom a trade calls. */
  readonly ask?: { readonly title: string; readonly people: readonly AskWords[] };
}

/** Which copy it is. */
export interface CopyWords {
  /** `Issue 3`, or `Not issued`. */
  readonly issue: string;
  /** `Issued for construction on 18 April 2026`. */
  readonly words: string;
  /** What to do with it; empty when it is issued for construction. */
  readonly limit: string;
  /** A copy cannot know whether it is the last one. */
  readonly doubt: string;
  /** The issue that it takes the place of; empty when none is known. */
  readonly replaces: string;
}

/** One of the card's questions with its first answers. */
export interface CardPart<Row> {
  readonly title: string;
  readonly rows: readonly Row[];
  /** Said where there are no rows. */
  readonly none: string;
  /** `All 12 rooms`; empty where the card has them all. */
  readonly all: string;
}

export interface NextRoomWords {
  readonly room: HandoutNext;
  readonly day: string;
  /** Its work then, and the milestone. */
  readonly work: string;
}

interface OpenWords {
  readonly question: HandoutQuestion;
  readonly what: string;
  /** `3 possible`; empty where nothing is considered. */
  readonly possible: string;
}

interface AskWords extends HandoutPerson {
  /** Name, or the role where there is none. */
  readonly called: string;
  /** Addresses of telephone and mail, by which they are reached at a tap; absent where none is recorded. */
  readonly call?: string;
  readonly write?: string;
}

/** As many of each as a first screen or sheet has room for; the rest stands further down. */
const most = 4;

/** What a foreman asks first, as it is said: which copy, where next, what must be there, what is open, whom to ask. */
export function cardWords(handout: Handout): CardWords {
  const { card, questions, cover } = handout;
  const people = whomToAsk(cover);
  return {
    copy: copyWords(handout),
    rooms: {
      title: 'Rooms, the next first',
      none: 'No room has work for this trade yet.',
      ...shown(card.rooms, nextRoomWords, (count) => `All ${count} rooms`),
    },
    first: {
      title: 'Must be there first',
      none: 'Of others, nothing that is recorded.',
      ...shown(
        card.first,
        (need: HandoutCard['first'][number]) => ({ what: need.what, when: firstWords(need) }),
        (count) => `All ${count}, with where`,
      ),
    },
    open: {
      title: 'Open',
      none: 'Nothing is open for this trade.',
      ...shown(questions, openWords, (count) => `All ${counted(count, 'question')}`),
    },
    ...(people.length > 0 && { ask: { title: 'Whom to ask', people: people.map(askWords) } }),
  };
}

/** Which copy this is, and what is to be done with it. */
export function copyWords({ cover, changes }: Pick<Handout, 'cover' | 'changes'>): CopyWords {
  const { stamp, on } = cover;
  return {
    ...standingOf(cover),
    doubt: `This copy is of ${printDay(stamp?.date ?? on)}. Ask the builder whether it is current.`,
    replaces:
      stamp && changes ? `It takes the place of issue ${changes.since.number} of ${printDay(changes.since.date)}.` : '',
  };
}

/** A room with its next work, said. */
export function nextRoomWords(room: HandoutNext): NextRoomWords {
  const { day, why } = nextWords(room);
  return { room, day, work: `${room.work}; ${why}` };
}

function openWords(question: HandoutQuestion): OpenWords {
  const { about, where, options } = question;
  return {
    question,
    what: `${about}: ${where}`,
    possible: options.length > 0 ? `${options.length} possible` : '',
  };
}

function askWords(person: HandoutPerson): AskWords {
  const { name, role, phone, mail } = person;
  return {
    ...person,
    called: name ?? capital(role),
    ...(phone !== undefined && { call: `tel:${phone.replaceAll(/[^\d+]/gu, '')}` }),
    ...(mail !== undefined && { write: `mailto:${mail}` }),
  };
}

function shown<From, Row>(
  all: readonly From[],
  say: (one: From) => Row,
  allOf: (count: number) => string,
): Pick<CardPart<Row>, 'rows' | 'all'> {
  return { rows: all.slice(0, most).map(say), all: all.length > most ? allOf(all.length) : '' };
}
