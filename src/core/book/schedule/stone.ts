import { factOf } from '../../fact/index.js';
import { weightInPlace } from '../../takeoff/index.js';
import type { Area } from '../../../base/units/index.js';
import type { BookSelection } from '../book.js';
import type { StoneRow } from './schedule.js';
import { optionOf, scheduled, takeoffOf } from './scheduled.js';
import type { Unscheduled } from './unscheduled.js';

/** Stone by the place it is set on: faces, corners, weight and what carries it. */
export function stoneSchedule(look: Unscheduled): readonly StoneRow[] {
  return look.book.rooms.flatMap((room) =>
    look
      .selectionsOf(room)
      .filter(({ category, state }) => look.category(category)?.measure.by === 'stone' && state !== 'none')
      .map((selection) => rowOf(selection, look)),
  );
}

function rowOf(selection: BookSelection, look: Unscheduled): StoneRow {
  const option = optionOf(selection, look);
  const { takeoff, pounds } = takeoffOf(selection);
  const flats = takeoff.find(({ part }) => part === 'flats');
  const corners = takeoff.find(({ part }) => part === 'corners');
  const [bed, setting, joint] = [
    factOf(option, 'stone', 'bed'),
    factOf(option, 'stone', 'setting'),
    factOf(option, 'stone', 'joint'),
  ];
  const weight = option && weightInPlace(option);
  return {
    room: selection.room,
    placeText: selection.placeText,
    stone: scheduled(selection, look),
    faces: (flats?.places ?? []).map(({ name, gross, net }) => ({ name, gross: gross as Area, net: net as Area })),
    flats: (flats?.net ?? 0) as Area,
    corners: corners?.net ?? 0,
    ...(pounds !== undefined && { pounds }),
    ...(weight?.per === 'sq ft' && { poundsPerSqFt: weight.pounds }),
    ...(bed !== undefined && { bed }),
    ...(setting !== undefined && { setting }),
    ...(joint !== undefined && { joint }),
    support: (option?.needs ?? []).map(({ what, by, before }) => ({ what, by, before })),
  };
}
