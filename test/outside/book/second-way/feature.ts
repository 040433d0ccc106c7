import { faceUnder, heightAt, spotAt, type Face } from './face.js';
import { feetOf, groupOf, sum, text, type Fields } from './paper.js';
import { sideOf, type CeilingPart, type Drawn } from './room.js';

/** Where a feature against a wall stands in plan, as deep as one of its figures says. */
export function footprintOf(room: Drawn, feature: Fields, deep: string): CeilingPart['over'] {
  const side = sideOf(room, feature['wall']);
  const at = feetOf(feature['at']);
  const [one, other] = [spotAt(side, at, 0), spotAt(side, at + feetOf(feature['width']), feetOf(feature[deep]))];
  return {
    x: Math.min(one.x, other.x),
    y: Math.min(one.y, other.y),
    width: Math.abs(one.x - other.x),
    depth: Math.abs(one.y - other.y),
  };
}

/** No two features of the demo stand on the same floor. */
export function footprintArea(room: Drawn, feature: Fields): number {
  switch (feature['kind']) {
    case 'built-in':
      return areaOf(footprintOf(room, feature, 'depth'));
    case 'chimney-breast': {
      const hearth = groupOf(feature['hearth']);
      return areaOf(footprintOf(room, feature, 'depth')) + feetOf(hearth['width']) * feetOf(hearth['depth']);
    }
    case 'half-wall':
      return feetOf(feature['run']) * feetOf(feature['thickness']);
    case 'stair':
      return (Number(feature['risers']) - 1) * feetOf(feature['going']) * feetOf(feature['width']);
    default:
      return 0;
  }
}

const areaOf = ({ width, depth }: CeilingPart['over']): number => width * depth;
const plain = (area: number): Face => ({ gross: area, net: area, cuts: [] });

export function facesOf(room: Drawn, feature: Fields): readonly (readonly [string, Face])[] {
  const id = text(feature['id']);
  const size = (key: string): number => feetOf(feature[key]);
  switch (feature['kind']) {
    case 'built-in':
      return [[`${id}/front`, plain(size('width') * size('height'))]];
    case 'niche':
      return [
        [`${id}/back`, plain(size('width') * size('height'))],
        [`${id}/sides`, plain(2 * (size('width') + size('height')) * size('depth'))],
      ];
    case 'half-wall': {
      // The one half wall of the demo stands with one end against a wall.
      const face = plain(size('run') * size('height'));
      return [
        [`${id}/left`, face],
        [`${id}/right`, face],
        [`${id}/ends`, plain(size('thickness') * size('height'))],
      ];
    }
    case 'chimney-breast':
      return breastFaces(room, feature);
    default:
      return [];
  }
}

/** Its height along the front, from its left end. */
function breastTop(room: Drawn, feature: Fields): (along: number, out: number) => number {
  const side = sideOf(room, feature['wall']);
  return (along, out) => heightAt(room, spotAt(side, feetOf(feature['at']) + along, out));
}

function breastFaces(room: Drawn, feature: Fields): readonly (readonly [string, Face])[] {
  const id = text(feature['id']);
  const [width, depth] = [feetOf(feature['width']), feetOf(feature['depth'])];
  const [firebox, hearth] = [groupOf(feature['firebox']), groupOf(feature['hearth'])];
  const top = breastTop(room, feature);
  const [opening, sill] = [feetOf(firebox['width']), feetOf(firebox['sill'])];
  const cuts = [
    { of: id, by: 'opening' as const, ...middle(width, opening), low: sill, high: sill + feetOf(firebox['height']) },
    {
      of: id,
      by: 'chimney-breast' as const,
      ...middle(width, feetOf(hearth['width'])),
      low: 0,
      high: feetOf(hearth['height']),
    },
  ];
  const around = 2 * feetOf(hearth['depth']) + feetOf(hearth['width']);
  return [
    [`${id}/front`, faceUnder(width, (along) => top(along, depth), cuts)],
    [`${id}/left`, faceUnder(depth, (out) => top(0, out), [])],
    [`${id}/right`, faceUnder(depth, (out) => top(width, out), [])],
    [`${id}/hearth`, plain(feetOf(hearth['width']) * feetOf(hearth['depth']))],
    [`${id}/hearth-riser`, plain(around * (feetOf(hearth['height']) - feetOf(hearth['thickness'])))],
  ];
}

const middle = (of: number, width: number): { from: number; to: number } => ({
  from: (of - width) / 2,
  to: (of + width) / 2,
});

export function runsOf(feature: Fields): readonly (readonly [string, number])[] {
  const id = text(feature['id']);
  if (feature['kind'] === 'timber') {
    const ends = (feature['end-allowances'] as readonly string[] | undefined) ?? [];
    return [[`${id}/length`, Number(feature['count']) * (feetOf(feature['length']) + sum(ends.map(feetOf)))]];
  }
  if (feature['kind'] === 'drop-edge') return [[`${id}/rail`, feetOf(feature['run'])]];
  if (feature['kind'] !== 'stair') return [];
  const [risers, going] = [Number(feature['risers']), feetOf(feature['going'])];
  // One triangle of the whole flight is as long as those of its steps together.
  const slope = Math.hypot((feetOf(feature['rise']) * (risers - 1)) / risers, going * (risers - 1));
  return [
    [`${id}/rail`, slope * Number(feature['rails'])],
    [`${id}/handrail`, slope * Number(feature['handrails'])],
  ];
}

/** Outside corners of a breast in feet, from the top of its hearth. */
export function breastCorners(room: Drawn, feature: Fields): number {
  const top = breastTop(room, feature);
  const [width, depth] = [feetOf(feature['width']), feetOf(feature['depth'])];
  return top(0, depth) + top(width, depth) - 2 * feetOf(groupOf(feature['hearth'])['height']);
}
