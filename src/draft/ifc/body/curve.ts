import { figure, listOf, type Model } from '../model.js';
import { PartRefused } from '../refused.js';
import { isTyped, wordOf, type Value } from '../step/value.js';
import { less, placedIn, size, type Frame, type Xyz } from '../xyz.js';

/** A closed line of places, in feet, that does not repeat its first. */
export type Loop = readonly Xyz[];

/** Nearer than this, in feet, is one place: 0.3 micrometres. */
const near = 1e-6;

/** The outline of a flat shape, then its holes. Throws PartRefused for what is not straight. */
export function profileLoops(model: Model, value: Value): readonly Loop[] {
  const { type, args } = model.at(value);
  switch (type) {
    case 'IFCRECTANGLEPROFILEDEF': {
      const [x, y] = [model.length(args[3]) / 2, model.length(args[4]) / 2];
      const frame = model.axes(args[2]);
      return [rectangle(frame, x, y)];
    }
    case 'IFCARBITRARYCLOSEDPROFILEDEF':
      return [closedLoop(model, args[2])];
    case 'IFCARBITRARYPROFILEDEFWITHVOIDS':
      return [args[2], ...listOf(args[3])].map((curve) => closedLoop(model, curve));
  }
  throw new PartRefused(`its outline is an ${type}, which is not read`);
}

function rectangle(frame: Frame, x: number, y: number): Loop {
  const corners = [
    [-x, -y],
    [x, -y],
    [x, y],
    [-x, y],
  ] as const;
  return corners.map(([east, north]) => placedIn(frame, { x: east, y: north, z: 0 }));
}

function closedLoop(model: Model, value: Value): Loop {
  const loop = withoutRepeats(points(model, value, 0));
  if (loop.length < 3) throw new PartRefused('its outline has fewer than three corners');
  return loop;
}

function points(model: Model, value: Value, depth: number): Loop {
  if (depth > 5) throw new PartRefused('its outline is made of itself');
  const { type, args } = model.at(value);
  switch (type) {
    case 'IFCPOLYLINE':
      return listOf(args[0]).map(model.point);
    case 'IFCINDEXEDPOLYCURVE':
      return indexed(model, args);
    case 'IFCCOMPOSITECURVE':
      return model.each(args[0]).flatMap((segment) => {
        const along = points(model, segment.args[2], depth + 1);
        return wordOf(segment.args[1]) === 'F' ? along.toReversed() : along;
      });
  }
  throw new PartRefused(
    type === 'IFCTRIMMEDCURVE' || type === 'IFCCIRCLE' ? arcs : `its outline is an ${type}, which is not read`,
  );
}

const arcs = 'its outline has arcs, which are not drafted';

function indexed(model: Model, args: readonly Value[]): Loop {
  const places = listOf(model.at(args[0]).args[0]).map(model.place);
  if (args[1] === undefined) return places;
  return listOf(args[1]).flatMap((segment) => {
    if (!isTyped(segment) || segment.type !== 'IFCLINEINDEX') throw new PartRefused(arcs);
    return listOf(segment.value).map((index) => placeAt(places, index));
  });
}

/** By its number, which counts from 1. */
export function placeAt(places: readonly Xyz[], index: Value): Xyz {
  const place = places[figure(index) - 1];
  if (!place) throw new PartRefused('it counts corners that are not there');
  return place;
}

/** Without places that are where the one before is, the first after the last. */
export function withoutRepeats(loop: Loop): Loop {
  return loop.filter((place, index) => size(less(place, loop[(index + loop.length - 1) % loop.length] as Xyz)) > near);
}
