import type { BookRoom, LookUp } from '../core/book/index.js';
import type { DatedMilestone } from '../core/calendar/index.js';
import { byText } from '../base/units/index.js';
import { ref } from '../sheet/index.js';
import { needRows } from '../table/index.js';
import type { HandoutCard, HandoutNext } from './handout.js';
import { joined } from './own.js';
import { sieve, sieveName } from './sieve.js';
import { milestoneOf } from './words.js';
import type { Work } from './work.js';

/** What a foreman asks first: which rooms come next, and what others must have done there. The records hold no plan of crews by the
 *  day, so rooms stand by the milestones of their work, those still to come first. */
export function card(work: Work): HandoutCard {
  return {
    rooms: work.look.book.rooms
      .flatMap((room) => nextIn(room, work) ?? [])
      .toSorted((a, b) => byComing(a.milestone, b.milestone))
      .map(({ room, milestone, categories }) => ({
        slug: ref(room.slug),
        number: sieveName(room.number),
        name: sieveName(room.name),
        work: joined(
          categories.map((slug) => sieveName(work.look.categoryName(slug))),
          ', ',
        ),
        ...comingOf(milestone, work.look),
      })),
    first: needRows(work.look)
      .filter(({ of }) => of === work.trade.slug)
      .map((row) => ({ row, milestone: stand(row.before, work.look) }))
      .toSorted((a, b) => byComing(a.milestone, b.milestone))
      .flatMap(({ row: { what, by, products }, milestone }) => {
        const said = sieve(what);
        if (said === '') return [];
        const provider = sieveName(work.look.tradeName(by));
        return [
          {
            what: said,
            by: provider,
            ...comingOf(milestone, work.look),
            onlyIf: products.some(isDecided) ? [] : products.map(({ name }) => sieveName(name)),
          },
        ];
      }),
  };
}

const isDecided = ({ isDecided: yes }: { readonly isDecided: boolean }): boolean => yes;

/** A milestone as the card counts with it. */
interface Stand {
  readonly id: string;
  readonly date: string;
  readonly isPast: boolean;
}

function stand(id: string, { book }: LookUp): Stand {
  const found: DatedMilestone | undefined = book.calendar.milestones.find((milestone) => milestone.id === id);
  return { id, date: found?.date ?? '', isPast: found !== undefined && (found.done === true || found.date < book.on) };
}

/** By day; what is past last, the latest of it first. */
function byComing(a: Stand, b: Stand): number {
  if (a.isPast !== b.isPast) return a.isPast ? 1 : -1;
  return a.isPast ? byText(b.date, a.date) : byText(a.date, b.date);
}

function comingOf({ id, isPast }: Stand, look: LookUp): Pick<HandoutNext, 'milestone' | 'date' | 'isPast'> {
  const { name, date } = milestoneOf(id, look);
  return { milestone: name, ...(date && { date }), isPast };
}

/** The milestone of a room at which the trade works there next, with the kinds of its work then. */
function nextIn(
  room: BookRoom,
  { look, ownIn }: Work,
): { readonly room: BookRoom; readonly milestone: Stand; readonly categories: readonly string[] } | undefined {
  const here = ownIn(room.slug)
    .filter(({ state }) => state !== 'none')
    .map(({ category, counted }) => {
      const at = look.option(category, counted)?.neededAt ?? look.category(category)?.neededAt ?? '';
      return { category, milestone: stand(at, look) };
    })
    .toSorted((a, b) => byComing(a.milestone, b.milestone));
  const next = here[0]?.milestone;
  if (!next) return undefined;
  const categories = here.filter(({ milestone }) => milestone.id === next.id).map(({ category }) => category);
  return { room, milestone: next, categories: [...new Set(categories)] };
}
