import { drawElevation, type Drawing, type ElevationOptions, type FinishRegion } from '../../src/draw/index.js';
import type { RoomMeasure } from '../../src/core/model/index.js';

/** One elevation for each wall, in the order of the walk. Ids are the prefix, a dash and the wall's id. */
export function drawWalls(
  measure: RoomMeasure,
  options: Omit<ElevationOptions, 'finishes'> & { readonly finishes?: ReadonlyMap<string, readonly FinishRegion[]> },
): Drawing[] {
  const { finishes, id, ...rest } = options;
  return measure.walls.map((wall) =>
    drawElevation(measure, wall, { ...rest, id: `${id}-${wall.id}`, finishes: finishes?.get(wall.id) ?? [] }),
  );
}
