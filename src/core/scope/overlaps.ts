import { sourceOf } from '../../base/problem/index.js';
import { meet } from '../takeoff/index.js';
import type { Names } from './names.js';
import { inSentence, placeWords } from './place-words.js';
import type { ScopeFinding } from './scope.js';
import { isThere, optionOf, type Selected, type Spot } from './spot.js';

interface Overlap {
  readonly first: Selected;
  readonly second: Selected;
  readonly spots: Spot[];
}

/** Two selections that claim one layer of one place. Layers that lie on each other by what their categories say, such as
 *  paint on ceiling boards, do not. */
export function findOverlaps(spots: readonly Spot[], names: Names): readonly ScopeFinding[] {
  const overlaps = new Map<string, Overlap>();
  for (const spot of spots) {
    for (const [first, second] of pairsOf(spot)) {
      if (arePartsApart(first, second, spot.place.id) || !claimOneLayer(first, second, names)) continue;
      const key = `${first.id} ${second.id}`;
      const overlap = overlaps.get(key) ?? { first, second, spots: [] };
      overlap.spots.push(spot);
      overlaps.set(key, overlap);
    }
  }
  return [...overlaps.values()].flatMap((overlap) => findingOf(overlap) ?? []);
}

/** Pairs of selections at a place. At an opening that is another room's record, what stands in it is told from there. */
function pairsOf({ selected, behind, place }: Spot): readonly (readonly [Selected, Selected])[] {
  const there = selected.filter(isThere);
  const inside = there.flatMap((first, index) => there.slice(index + 1).map((second) => [first, second] as const));
  if (place.kind !== 'opening' || !place.opening.own) return inside;
  // One door stands in an opening, whichever room selects it; trim has two sides.
  const standing = behind.filter((each) => isThere(each) && each.category.measure.by === 'each');
  return [
    ...inside,
    ...there
      .filter(({ category }) => category.measure.by === 'each')
      .flatMap((first) =>
        standing.filter((second) => !isSameChoice(first, second)).map((second) => [first, second] as const),
      ),
  ];
}

/** Whether they take the two parts of one wall. */
function arePartsApart(first: Selected, second: Selected, id: string): boolean {
  const [one, other] = [first, second].map(({ places }) => places.find((place) => place.id === id));
  return one !== undefined && other !== undefined && !meet(one, other);
}

function isSameChoice(a: Selected, b: Selected): boolean {
  return a.category === b.category && optionOf(a) === optionOf(b);
}

function claimOneLayer(a: Selected, b: Selected, names: Names): boolean {
  return a.category.layer === b.category.layer && !names.mayStack(a.category, b.category);
}

type Place = ReturnType<typeof sourceOf>;

function findingOf({ first, second, spots }: Overlap): ScopeFinding | undefined {
  const [spot] = spots;
  if (!spot) return undefined;
  const { layer } = first.category;
  const placeText = placeWords(spots, first.measure);
  const [one, other] = [first, second].map((each) => sourceOf(each.room.origin, each.selection.path)) as [Place, Place];
  const elsewhere = one.source === other.source ? `line ${one.line}` : `${one.source}, line ${one.line}`;
  return {
    id: `overlap/${first.room.slug}/${spot.place.id}/${layer}`,
    kind: 'overlap',
    room: second.room.slug,
    place: spot.place.id,
    placeText,
    what: `${wordsOf(first)} and ${inSentence(wordsOf(second))} both claim the ${layer} here: ${inSentence(placeText)}.`,
    fix: `Leave the place out of this selection or of the other (${elsewhere}); where one lies on the other, its category says so under needs-beneath.`,
    trades: [...new Set([first.category.trade, second.category.trade])],
    ...other,
  };
}

function wordsOf(selected: Selected): string {
  const option = optionOf(selected);
  return option ? `${selected.category.name} (${option.name})` : selected.category.name;
}
