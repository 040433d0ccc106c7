import { sectionWords, timberOf } from '../../feature/index.js';
import type { BookRoom, BookSelection } from '../book.js';
import type { TimberRow } from './schedule.js';
import { scheduled, takeoffOf } from './scheduled.js';
import type { Unscheduled } from './unscheduled.js';

/** Every kind of timber, in order of room, with the option that stands. */
export function timberSchedule(look: Unscheduled): readonly TimberRow[] {
  return look.book.rooms.flatMap((room) =>
    look
      .selectionsOf(room)
      .filter(({ state }) => state !== 'none')
      .flatMap((selection) => rowsOf(selection, room, look)),
  );
}

function rowsOf(selection: BookSelection, room: BookRoom, look: Unscheduled): readonly TimberRow[] {
  return takeoffOf(selection).takeoff.flatMap(({ places, cutting }) =>
    places.flatMap(({ place, timber: pieces }): TimberRow[] => {
      const feature = room.measure.features.find(({ id }) => id === place.split('/')[0]);
      const timber = feature && timberOf(feature);
      if (!pieces || !timber) return [];
      const { count, length, pounds } = pieces;
      const { joinery } = timber;
      const own = (cutting?.cuts ?? []).filter((cut) => cut.length === length);
      return [
        {
          room: room.slug,
          place,
          name: feature.name,
          timber: scheduled(selection, look),
          count,
          clear: timber.length,
          ends: timber.ends,
          length,
          section: sectionWords(timber),
          stock: own.map(({ from, count: cut }) => ({ length: from, count: cut })),
          ...(pounds !== undefined && { pounds }),
          ...(joinery !== undefined && { joinery }),
        },
      ];
    }),
  );
}
