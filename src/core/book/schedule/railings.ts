import { factOf } from '../../fact/index.js';
import type { Run } from '../../model/index.js';
import type { Rail } from '../../takeoff/index.js';
import type { Length } from '../../../base/units/index.js';
import type { BookRoom, BookSelection } from '../book.js';
import type { RailingRow, RailingSchedule } from './schedule.js';
import { optionOf, scheduled, takeoffOf } from './scheduled.js';
import type { Unscheduled } from './unscheduled.js';

/** Every run of railing, in order of room. Selections are railings when their category is measured as railing. */
export function railingSchedule(look: Unscheduled): RailingSchedule {
  const rows = look.book.rooms.flatMap((room) =>
    look
      .selectionsOf(room)
      .filter(({ category, state }) => look.category(category)?.measure.by === 'railing' && state !== 'none')
      .flatMap((selection) => selection.places.flatMap(({ id }) => rowOf(id, selection, room, look) ?? [])),
  );
  return {
    rows,
    length: rows.reduce((sum, { length }) => sum + length, 0) as Length,
    posts: rows.reduce((sum, { posts = 0 }) => sum + posts, 0),
  };
}

function rowOf(place: string, selection: BookSelection, room: BookRoom, look: Unscheduled): RailingRow | undefined {
  const feature = room.measure.features.find(({ id }) => id === place.split('/')[0]);
  const run = feature?.runs.find(({ id }) => id === place) ?? feature?.runs.find(isRail);
  if (!feature || !run) return undefined;
  const option = optionOf(selection, look);
  const rail = railAt(place, selection);
  const posts = rail?.pieces.reduce((sum, piece) => sum + piece.posts.length, 0);
  const [height, clearOpening] = [factOf(option, 'railing', 'height'), factOf(option, 'railing', 'clear-opening')];
  const [postSpacing, mount] = [factOf(option, 'railing', 'post-spacing'), factOf(option, 'railing', 'mount')];
  return {
    room: room.slug,
    place,
    name: feature.name,
    railing: scheduled(selection, look),
    kind: run.slope === undefined ? 'level' : 'rake',
    ...(run.slope !== undefined && { slope: run.slope }),
    length: run.length,
    pieces: run.pieces,
    ...(posts !== undefined && { posts }),
    ...(rail && { rail }),
    ...(height !== undefined && { height }),
    ...(clearOpening !== undefined && { clearOpening }),
    ...(postSpacing !== undefined && { postSpacing }),
    ...(mount !== undefined && { mount }),
    ...(feature.drop !== undefined && { drop: feature.drop }),
  };
}

/** The railing at a place with the option that stands there. */
export function railAt(place: string, selection: BookSelection): Rail | undefined {
  return takeoffOf(selection)
    .takeoff.flatMap(({ places }) => places)
    .find((each) => each.place === place && each.rail)?.rail;
}

function isRail({ id }: Run): boolean {
  return id === 'rail' || id.endsWith('/rail');
}
