import type { Run } from '../../model/index.js';
import type { Place } from '../places.js';

/** The run that a railing at a place follows: a feature's rail, or the cap of a half wall. */
export function railOf(place: Place): Run | undefined {
  if (place.kind === 'run') return isHandrail(place.run) ? undefined : place.run;
  if (place.kind !== 'feature') return undefined;
  const { kind, runs } = place.feature;
  return runs.find(({ id }) => id === 'rail' || id.endsWith('/rail')) ?? (kind === 'half-wall' ? runs[0] : undefined);
}

/** The rail that brackets hold to the wall beside a stair. */
export function handrailOf(place: Place): Run | undefined {
  if (place.kind === 'run') return isHandrail(place.run) ? place.run : undefined;
  return place.kind === 'feature' ? place.feature.runs.find(isHandrail) : undefined;
}

function isHandrail({ id }: Run): boolean {
  return id === 'handrail' || id.endsWith('/handrail');
}

/** A run among those of the house. */
export function runKey(room: string, { id }: Pick<Run, 'id'>): string {
  return `${room}/${id}`;
}
