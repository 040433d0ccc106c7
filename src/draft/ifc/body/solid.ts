import { limits } from '../limits.js';
import { listOf, squared, usualX, type Model } from '../model.js';
import { PartRefused } from '../refused.js';
import { wordOf, type Entity, type Value } from '../step/value.js';
import { add, dot, placedIn, times, turnedBy, up, within, type Frame, type Xyz } from '../xyz.js';
import { placeAt, profileLoops, withoutRepeats, type Loop } from './curve.js';
import { cutAway } from './cut.js';
import { faceOf, few, normalOf, type Face, type Solid } from './face.js';

/** The solids of one item of a body that stands in a frame, faces turned as they come. Throws PartRefused for a kind that is not read. */
export function solidsOf(model: Model, item: Entity, frame: Frame, depth = 0): readonly Solid[] {
  if (depth > limits.bodies) throw new PartRefused(`its body is made of itself, or more than ${limits.bodies} deep`);
  model.takePart();
  const { type, args } = item;
  switch (type) {
    case 'IFCEXTRUDEDAREASOLID':
      return [extruded(model, args, frame)];
    case 'IFCFACETEDBREP':
      return [shellFaces(model, model.at(args[0]), frame)];
    case 'IFCFACEBASEDSURFACEMODEL':
    case 'IFCSHELLBASEDSURFACEMODEL':
      // Its shells may be one surface in pieces.
      return [few(model.each(args[0]).flatMap((shell) => shellFaces(model, shell, frame)))];
    case 'IFCTRIANGULATEDFACESET':
      return [indexedFaces(model, args[0], listOf(args[3]), frame)];
    case 'IFCPOLYGONALFACESET': {
      const faces = model.each(args[2]).map((face) => face.args[0]);
      return [indexedFaces(model, args[0], faces, frame)];
    }
    case 'IFCMAPPEDITEM':
      return mapped(model, args, frame, depth);
    case 'IFCBOOLEANCLIPPINGRESULT':
    case 'IFCBOOLEANRESULT':
      return clipped(model, args, frame, depth);
  }
  throw new PartRefused(`its body is an ${type}, which is not read`);
}

function extruded(model: Model, args: readonly Value[], frame: Frame): Solid {
  const stand = within(frame, model.axes(args[1]));
  const way = times(turnedBy(stand, model.direction(args[2])), model.length(args[3]));
  const foot = faceOf(profileLoops(model, args[0]).map((loop) => loop.map((corner) => placedIn(stand, corner))));
  // Seen from outside, the foot goes against the way and the head with it.
  const head = dot(normalOf(foot), way) > 0 ? foot : foot.map((loop) => loop.toReversed());
  const moved = head.map((loop) => loop.map((corner) => add(corner, way)));
  const sides = head.flatMap((loop, ring) =>
    loop.map((corner, index): Face => {
      const next = (index + 1) % loop.length;
      const over = moved[ring] as Loop;
      return [[corner, loop[next] as Xyz, over[next] as Xyz, over[index] as Xyz]];
    }),
  );
  return few([head.map((loop) => loop.toReversed()), moved, ...sides]);
}

function shellFaces(model: Model, shell: Entity, frame: Frame): Solid {
  return few(listOf(shell.args[0]))
    .map((face) => {
      const loops = model.each(model.at(face).args[0]).map((bound) => {
        const loop = model.at(bound.args[0]);
        if (loop.type !== 'IFCPOLYLOOP')
          throw new PartRefused(`its body has a face of ${loop.type}, which is not read`);
        const corners = listOf(loop.args[0]).map((corner) => placedIn(frame, model.point(corner)));
        return wordOf(bound.args[1]) === 'F' ? corners.toReversed() : corners;
      });
      return faceOf(loops.map(withoutRepeats).filter((loop) => loop.length > 2));
    })
    .filter((face) => face.length > 0);
}

function indexedFaces(model: Model, points: Value, faces: readonly Value[], frame: Frame): Solid {
  const places = listOf(model.at(points).args[0]).map((figures) => placedIn(frame, model.place(figures)));
  return few(faces).flatMap((face): readonly Face[] => {
    const loop = withoutRepeats(listOf(face).map((index) => placeAt(places, index)));
    return loop.length > 2 ? [[loop]] : [];
  });
}

/** A copy of a body that is kept once: turned and moved, never scaled. */
function mapped(model: Model, args: readonly Value[], frame: Frame, depth: number): readonly Solid[] {
  const [origin, shape] = model.at(args[0]).args;
  const { type, args: operator } = model.at(args[1]);
  if (type !== 'IFCCARTESIANTRANSFORMATIONOPERATOR3D')
    throw new PartRefused(`its body is copied by an ${type}, which is not read`);
  const [first, second, place, scale, third] = operator;
  if (scale !== undefined && scale !== 1) throw new PartRefused('its body is a copy at another scale');
  const z = third === undefined ? up : model.direction(third);
  const turn = squared(z, first === undefined ? usualX(z) : model.direction(first));
  if (second !== undefined && dot(turn.y, model.direction(second)) < 0)
    throw new PartRefused('its body is a copy in a mirror');
  const target = within(frame, { origin: model.point(place), ...turn });
  const stand = within(target, model.axes(origin));
  const solids: Solid[] = [];
  for (const item of model.each(model.at(shape).args[3])) {
    solids.push(...solidsOf(model, item, stand, depth + 1));
    few(solids.flat());
  }
  return solids;
}

/** A body without what lies on one side of a plane. */
function clipped(model: Model, args: readonly Value[], frame: Frame, depth: number): readonly Solid[] {
  const operator = wordOf(args[0]);
  if (operator !== 'DIFFERENCE')
    throw new PartRefused(`its body is a ${operator?.toLowerCase() ?? 'mixture'} of two, which is not read`);
  const solids = solidsOf(model, model.at(args[1]), frame, depth + 1);
  const second = model.at(args[2]);
  if (second.type !== 'IFCHALFSPACESOLID')
    throw new PartRefused(`its body is cut by an ${second.type}, which is not read`);
  const surface = model.at(second.args[0]);
  if (surface.type !== 'IFCPLANE') throw new PartRefused(`its body is cut along an ${surface.type}, which is not read`);
  const plane = within(frame, model.axes(surface.args[0]));
  // `.F.`: the half-space lies on the side that the plane's normal points to.
  const way = wordOf(second.args[1]) === 'F' ? plane.z : times(plane.z, -1);
  return solids.map((solid) => cutAway(solid, { on: plane.origin, way }));
}
