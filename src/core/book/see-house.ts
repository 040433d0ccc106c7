import type { DatedMilestone } from '../calendar/index.js';
import { lengthOf } from '../../base/geometry/index.js';
import {
  viewHouse,
  viewRoom,
  type HouseView,
  type Matching,
  type SelectionView,
  type Stand,
} from '../caution/index.js';
import { thicknessOf } from '../lay/index.js';
import {
  knownAround,
  selectionId,
  type Category,
  type LaidHouse,
  type Match,
  type Option,
  type Records,
  type Room,
  type RoomMeasure,
} from '../model/index.js';
import type { BookSelection } from './book.js';
import { optionId } from './draft.js';
import { groupBy } from './group-by.js';
import { optionSlugs } from './option-slugs.js';

/** What the rules see of a selection. */
export type SeenSelection = Pick<
  BookSelection,
  | 'id'
  | 'room'
  | 'category'
  | 'placeText'
  | 'places'
  | 'state'
  | 'counted'
  | 'chosen'
  | 'standard'
  | 'pounds'
  | 'chosenOn'
  | 'considering'
>;

/** What the rules see beside records and selections. */
export interface Seen {
  readonly measures: ReadonlyMap<string, RoomMeasure>;
  readonly laid: LaidHouse;
  readonly milestones: readonly DatedMilestone[];
}

/** The house as the rules of caution see it. */
export function seeHouse(
  { house, rooms, categories, options }: Records,
  { measures, laid, milestones }: Seen,
  selections: readonly SeenSelection[],
): HouseView {
  const byCategory = new Map(categories.map((category) => [category.slug, category]));
  const byOption = new Map(options.map((option) => [optionId(option.category, option.slug), option]));
  const grounds = new Map(house.levels.map(({ id, aboveGround }) => [id, aboveGround]));
  const byRoom = groupBy(selections, ({ room }) => room);
  return viewHouse({
    ...(house.climateZone !== undefined && { climateZone: house.climateZone }),
    ...(house.code && { code: house.code }),
    levels: house.levels.map(({ id }) => id),
    categories,
    rooms: rooms.flatMap(({ slug, name, level, use, aboveGround = grounds.get(level) }) => {
      const measure = measures.get(slug);
      const own = (byRoom.get(slug) ?? []).flatMap((selection) => {
        const category = byCategory.get(selection.category);
        return category ? [seeSelection(selection, category, byOption)] : [];
      });
      return measure
        ? [
            viewRoom({
              slug,
              name,
              level,
              use,
              measure,
              selections: own,
              ...(aboveGround !== undefined && { aboveGround }),
            }),
          ]
        : [];
    }),
    stands: standsOf(laid, measures),
    outsideWall: lengthOf(thicknessOf(undefined, house).outside),
    matches: house.matches.map((match) => seeMatch(match, rooms)),
    milestones: new Map(milestones.map(({ id, name, date }) => [id, { name, date }])),
  });
}

function standsOf({ groups }: LaidHouse, measures: Seen['measures']): ReadonlyMap<string, Stand> {
  return new Map(
    groups.flatMap(({ levels }, group) =>
      levels.flatMap(({ rooms }) =>
        rooms.flatMap(({ room, at }): readonly (readonly [string, Stand])[] => {
          const measure = measures.get(room);
          return measure && knownAround(measure) ? [[room, { group, at }]] : [];
        }),
      ),
    ),
  );
}

/** A place is one that a selection of the category is written at. */
function seeMatch({ name, why, category, places }: Match, rooms: readonly Room[]): Matching {
  const selections = places.flatMap(({ room: slug, place }) =>
    rooms
      .filter((room) => room.slug === slug)
      .flatMap((room) => room.selections)
      .filter((selection) => selection.category === category && (place === undefined || selection.at.includes(place)))
      .map((selection) => selectionId(slug, selection)),
  );
  return { name, why, selections: [...new Set(selections)] };
}

function seeSelection(
  selection: SeenSelection,
  category: Category,
  options: ReadonlyMap<string, Option>,
): SelectionView {
  const { id, room, placeText, places, state, counted, chosen, standard, pounds, chosenOn } = selection;
  const find = (slug: string): readonly Option[] => {
    const option = options.get(optionId(category.slug, slug));
    return option ? [option] : [];
  };
  const [standing] = find(chosen ?? counted ?? standard ?? '');
  return {
    id,
    room,
    category,
    placeText,
    places,
    state: state === 'open' || state === 'none' ? state : 'decided',
    ...(standing && state !== 'none' && { counted: standing }),
    options: state === 'none' ? [] : state === 'open' ? optionSlugs(selection).flatMap(find) : find(chosen ?? ''),
    ...(pounds !== undefined && { pounds }),
    ...(chosenOn !== undefined && { chosenOn }),
  };
}
