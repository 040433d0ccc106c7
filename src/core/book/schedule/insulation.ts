import { besideWall, isOn, layerStep, type PlacePart } from '../../takeoff/index.js';
import { carries, factOf } from '../../fact/index.js';
import type { Area } from '../../../base/units/index.js';
import type { BookRoom, BookSelection } from '../book.js';
import { groupBy } from '../group-by.js';
import type { InsulationRow, SoundRow } from './schedule.js';
import { optionOf, scheduled, standingId, standingOf, takeoffOf } from './scheduled.js';
import type { Unscheduled } from './unscheduled.js';

/** Insulation by assembly: places with the same layers, their R-values added up. Source: R-values in series add. */
export function insulationSchedule(look: Unscheduled): readonly InsulationRow[] {
  const places = look.book.rooms.flatMap((room) => insulatedPlaces(room, look));
  const assemblies = [...groupBy(places, ({ key }) => key).values()];
  const rows = assemblies.map((own): InsulationRow => {
    const [first] = own;
    const layers = (first?.layers ?? []).map((selection) => layerOf(selection, look));
    return {
      where: first?.where ?? '',
      layers,
      r: layers.reduce((sum, { r }) => sum + r, 0),
      ...(layers.some(({ continuous }) => continuous !== undefined) && {
        continuous: layers.reduce((sum, { continuous = 0 }) => sum + continuous, 0),
      }),
      area: own.reduce((sum, { area }) => sum + area, 0) as Area,
      rooms: [...new Set(own.map(({ room }) => room.slug))],
    };
  });
  return rows.sort((a, b) => orderOf(a) - orderOf(b) || b.r - a.r);
}

/** Walls that are rated for sound, by room. */
export function soundSchedule(look: Unscheduled): readonly SoundRow[] {
  return look.book.rooms.flatMap((room) =>
    look.selectionsOf(room).flatMap((selection): readonly SoundRow[] => {
      const option = optionOf(selection, look);
      const stc = factOf(option, 'sound-insulation', 'stc');
      if (stc === undefined) return [];
      const [assembly, thickness] = [
        factOf(option, 'sound-insulation', 'assembly'),
        factOf(option, 'sound-insulation', 'thickness-in-place'),
      ];
      const walls = new Set(selection.places.map(({ id }) => id));
      return [
        {
          room: room.slug,
          placeText: selection.placeText,
          batt: scheduled(selection, look),
          stc,
          ...(assembly !== undefined && { assembly }),
          ...(thickness !== undefined && { thickness }),
          area: (takeoffOf(selection).takeoff[0]?.net ?? 0) as Area,
          beside: [
            ...new Set(
              room.measure.walls
                .filter(({ id }) => walls.has(id))
                .flatMap((wall) => besideWall(wall, room.measure))
                .filter((other) => other !== 'outside'),
            ),
          ],
          openings: room.measure.openings.filter(({ wall }) => walls.has(wall)).map(({ mark }) => mark),
        },
      ];
    }),
  );
}

interface Insulated {
  readonly room: BookRoom;
  readonly where: InsulationRow['where'];
  readonly layers: readonly BookSelection[];
  readonly area: number;
  /** Alike for places with the same assembly. */
  readonly key: string;
}

/** One selection at a place, with what it takes of it. */
interface Layer {
  readonly selection: BookSelection;
  readonly place: string;
  readonly part?: PlacePart;
  readonly net: number;
}

function insulatedPlaces(room: BookRoom, look: Unscheduled): readonly Insulated[] {
  const layered = look
    .selectionsOf(room)
    .filter(
      (each) => optionOf(each, look) !== undefined && carries(look.category(each.category), 'insulation', 'r-value'),
    )
    .flatMap((selection) =>
      (takeoffOf(selection).takeoff[0]?.places ?? []).map(({ place, net }): Layer => {
        const part = selection.places.find(({ id }) => id === place)?.part;
        return { selection, place, net, ...(part && { part }) };
      }),
    );
  return [...groupBy(layered, ({ place }) => place)].flatMap(([place, own]) => {
    const where = whereIs(place, room);
    return assembliesAt(own).map(({ area, of }) => {
      const layers = of.map(({ selection }) => selection);
      const parts = layers.map((each) => [standingId(each), standingOf(each), each.supply].join(' '));
      return { room, where, layers, area, key: [where, ...parts].join(' | ') };
    });
  });
}

/** What lies over each part of a place: what takes all of it lies over every part, and by itself over the rest. */
function assembliesAt(own: readonly Layer[]): readonly { readonly area: number; readonly of: readonly Layer[] }[] {
  const whole = own.filter(({ part }) => part === undefined);
  const parts = [...groupBy(own, ({ part }) => part ?? '')].flatMap(([part, of]) => (part === '' ? [] : [of]));
  const found = parts.map((of) => ({
    area: of[0]?.net ?? 0,
    of: own.filter((one) => whole.includes(one) || of.includes(one)),
  }));
  const rest = found.reduce((left, { area }) => left - area, whole[0]?.net ?? 0);
  return rest > 0 ? [...found, { area: rest, of: whole }] : found;
}

function whereIs(place: string, { measure }: BookRoom): string {
  if (place === 'ceiling') return 'ceilings';
  if (place === 'floor') return 'floors';
  if (measure.steps?.some(({ id }) => id === place)) return 'ceiling steps';
  if (measure.risers?.some(({ id }) => id === place)) return 'risers';
  const feature = measure.features.find(({ id }) => isOn(id, place));
  if (!feature) return 'walls';
  return feature.kind === 'skylight' ? 'skylight shafts' : feature.name;
}

const order = ['ceilings', 'skylight shafts', 'ceiling steps', 'walls', 'floors', 'risers'];

/** Features by their own names come last. */
function orderOf({ where }: InsulationRow): number {
  const at = order.indexOf(where);
  return at < 0 ? order.length : at;
}

function layerOf(selection: BookSelection, look: Unscheduled): InsulationRow['layers'][number] {
  const option = optionOf(selection, look);
  const { standing, supply, option: id, name } = scheduled(selection, look);
  const [thickness, type, retarder] = [
    factOf(option, 'insulation', 'thickness-in-place'),
    factOf(option, 'insulation', 'type'),
    factOf(option, 'insulation', 'vapor-retarder'),
  ];
  const continuous = factOf(option, 'insulation', 'continuous-r');
  const of = option?.layers?.map((layer) => ({
    ...layerStep(layer),
    ...(layer.thickness !== undefined && { thickness: layer.thickness }),
  }));
  const mustBeCovered = factOf(option, 'insulation', 'needs-cover');
  return {
    standing,
    supply,
    ...(id !== undefined && { option: id, name: name ?? id }),
    r: factOf(option, 'insulation', 'r-value') ?? 0,
    ...(thickness !== undefined && { thickness }),
    ...(type !== undefined && { type }),
    ...(retarder !== undefined && { retarder }),
    ...(mustBeCovered !== undefined && { mustBeCovered }),
    ...(of && { of: of.map(({ why: _, ...layer }) => layer) }),
    ...(continuous !== undefined && { continuous }),
  };
}
