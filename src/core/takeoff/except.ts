import type { Exception, RoomMeasure, Selection } from '../model/index.js';
import { printLength, type Length } from '../../base/units/index.js';
import { findPlaces } from './places.js';

type Stretch = Extract<Exception, { readonly from: Length }>;

/** Ids of the places that a selection leaves out. */
export function placesLeftOut({ except = [] }: Pick<Selection, 'except'>, measure: RoomMeasure): ReadonlySet<string> {
  const whole = except.filter((one) => !isStretch(one));
  return new Set(whole.flatMap(({ place }) => findPlaces(place, measure) ?? []).map(({ id }) => id));
}

/** Stretches of a wall that are left out. */
export function stretchesLeftOut(except: readonly Exception[], wall: string): readonly Stretch[] {
  return except.filter(isStretch).filter(({ place }) => place === wall);
}

/** `shower-north and 3'-0" of south`, for people; names as the room measures them. */
export function exceptWords({ except = [] }: Pick<Selection, 'except'>, measure: RoomMeasure): readonly string[] {
  return except.flatMap((one) => {
    const names = (findPlaces(one.place, measure) ?? []).map(({ name }) => inside(name));
    return isStretch(one) ? names.map((name) => `${printLength((one.to - one.from) as Length)} of ${name}`) : names;
  });
}

/** What an exception has against it: it names nothing here, or nothing that the selection is at. */
export function exceptProblems(
  { at, except = [] }: Pick<Selection, 'at' | 'except'>,
  measure: RoomMeasure,
  byRun: boolean,
): readonly { readonly index: number; readonly message: string; readonly fix: string }[] {
  const covered = new Set(at.flatMap((word) => coveredBy(word, measure)));
  return except.flatMap((one, index) => {
    const { place } = one;
    if (!covered.has(place)) {
      const message = `'${place}' is left out, but it is not among the places of this selection`;
      return [{ index, message, fix: `leave out one of ${[...covered].join(', ')}` }];
    }
    if (!isStretch(one)) return [];
    const wall = measure.walls.find(({ id }) => id === place);
    if (!byRun || !wall) {
      const message = `a stretch of '${place}' is left out, which is for runs along walls`;
      return [{ index, message, fix: `leave out all of it: ${place}` }];
    }
    if (one.from < one.to && one.to <= wall.run) return [];
    const message = `${printLength(one.from)} to ${printLength(one.to)} is no stretch of '${place}', which is ${printLength(wall.run)} long`;
    return [{ index, message, fix: 'from and to count from the left end of the wall, facing it from inside' }];
  });
}

function coveredBy(word: string, measure: RoomMeasure): readonly string[] {
  const walls = measure.walls.filter(({ openTo }) => openTo === undefined).map(({ id }) => id);
  if (word === 'base') return walls;
  return (findPlaces(word, measure) ?? []).map(({ id }) => id);
}

function isStretch(one: Exception): one is Stretch {
  return 'from' in one;
}

/** A name inside a sentence; marks stay as they are. */
function inside(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}
