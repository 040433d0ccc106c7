import type { Book } from '../book/index.js';

/** A caution or a finding of scope that is there on one side only, or reads otherwise now. */
export interface NoticeChange {
  readonly id: string;
  readonly kind: 'appears' | 'goes' | 'changed';
  /** Slug on the newer side, or on the older when it goes. */
  readonly room: string;
  readonly placeText: string;
  readonly title: string;
  /** What was seen, on each side that has it. */
  readonly from?: string;
  readonly to?: string;
  /** Whom to ask, or how to mend it. */
  readonly then: string;
  readonly trades: readonly string[];
}

interface Notice {
  readonly id: string;
  readonly room: string;
  readonly placeText: string;
  readonly title: string;
  readonly text: string;
  readonly then: string;
  readonly trades: readonly string[];
}

/** Cautions by id; the id's room is followed when the room was renamed. */
export function compareCautions(from: Book, to: Book, roomNow: (slug: string) => string): NoticeChange[] {
  const notices = (book: Book): Notice[] =>
    book.cautions.map((caution) => ({
      ...caution,
      text: caution.accepted
        ? `${caution.seen} Accepted by ${caution.accepted.by}: ${caution.accepted.why}`
        : caution.seen,
      then: caution.ask,
    }));
  return compareNotices(notices(from), notices(to), roomNow);
}

const findingTitles = {
  gap: 'Nobody does it',
  overlap: 'Two do it',
  'no-installer': 'Nobody installs it',
  'need-without-trade': 'Needed, and by no trade',
  'never-chosen': 'Never chosen',
} as const;

/** Findings of scope by id, likewise. */
export function compareFindings(from: Book, to: Book, roomNow: (slug: string) => string): NoticeChange[] {
  const notices = (book: Book): Notice[] =>
    book.scope.findings.map((finding) => ({
      ...finding,
      title: findingTitles[finding.kind],
      text: finding.what,
      then: finding.fix,
    }));
  return compareNotices(notices(from), notices(to), roomNow);
}

function compareNotices(
  from: readonly Notice[],
  to: readonly Notice[],
  roomNow: (slug: string) => string,
): NoticeChange[] {
  const before = new Map(from.map((notice) => [idNow(notice, roomNow), notice]));
  const after = new Map(to.map((notice) => [notice.id, notice]));
  const ids = [...new Set([...after.keys(), ...before.keys()])];
  return ids.flatMap((id): NoticeChange[] => {
    const [old, now] = [before.get(id), after.get(id)];
    const either = now ?? old;
    if (!either || old?.text === now?.text) return [];
    return [
      {
        id: either.id,
        kind: !old ? 'appears' : !now ? 'goes' : 'changed',
        room: either.room,
        placeText: either.placeText,
        title: either.title,
        ...(old && { from: old.text }),
        ...(now && { to: now.text }),
        then: either.then,
        trades: either.trades,
      },
    ];
  });
}

/** `<rule or kind>/<room>/…` with the room's slug of the newer side. */
function idNow({ id }: Notice, roomNow: (slug: string) => string): string {
  const [rule = '', room = '', ...rest] = id.split('/');
  return [rule, roomNow(room), ...rest].join('/');
}
