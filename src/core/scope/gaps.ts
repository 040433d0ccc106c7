import { sourceOf } from '../../base/problem/index.js';
import { joinWords } from '../../base/units/index.js';
import type { Names } from './names.js';
import { inSentence, placeWords } from './place-words.js';
import type { ScopeFinding } from './scope.js';
import { isThere, type Selected, type Spot } from './spot.js';

interface Gap {
  readonly names: readonly string[];
  readonly spots: Set<Spot>;
  readonly over: Set<Selected>;
}

/** Finishes with nothing beneath them that should be: one finding for what is missing in a room, however many finishes
 *  want it. */
export function findGaps(spots: readonly Spot[], names: Names): readonly ScopeFinding[] {
  const gaps = new Map<string, Gap>();
  for (const spot of spots) {
    for (const selected of spot.selected.filter(isThere)) {
      for (const needed of selected.category.needsBeneath ?? []) {
        if (names.isMet(needed, spot, selected)) continue;
        const key = `${spot.room.slug} ${needed.join(' ')}`;
        const gap = gaps.get(key) ?? { names: needed, spots: new Set(), over: new Set() };
        gap.spots.add(spot);
        gap.over.add(selected);
        gaps.set(key, gap);
      }
    }
  }
  return [...gaps.values()].flatMap((gap) => findingOf(gap, names) ?? []);
}

function findingOf({ names: needed, spots, over }: Gap, names: Names): ScopeFinding | undefined {
  const [spot] = spots;
  const [first] = over;
  if (!spot || !first) return undefined;
  const { room } = spot;
  const placeText = placeWords([...spots], first.measure);
  const finishes = joinWords([...new Set([...over].map(({ category }) => category.name.toLowerCase()))]);
  const missing = names.words(needed);
  const places = [...spots].map(({ place }) => place.id).join(', ');
  return {
    id: `gap/${room.slug}/${spot.place.id}/${needed[0] ?? ''}`,
    kind: 'gap',
    room: room.slug,
    place: spot.place.id,
    placeText,
    what: `Nothing says who does ${missing} beneath the ${finishes}: ${inSentence(placeText)}.`,
    fix: `Select ${missing} at ${places} in this room.`,
    trades: [...new Set([...over].map(({ category }) => category.trade))],
    ...sourceOf(room.origin, first.selection.path),
  };
}
