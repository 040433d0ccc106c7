import { describe, expect, test } from 'vitest';
import type { Option, OwnOpening, RoomMeasure } from '../../src/core/model/index.js';
import { leafFaces } from '../../src/core/takeoff/arithmetic/index.js';
import { besideOf } from '../../src/core/takeoff/beside.js';
import { layPlaces, resolvePlaces, takeOff } from '../../src/core/takeoff/index.js';
import { fromFeet, fromInches } from '../../src/base/units/index.js';
import { measured } from '../measure/measured.js';
import { flat, len, opening, size } from '../measure/room-record.js';
import { category, option, selection } from './room.js';

const roomWith = (kind: OwnOpening['kind'], sizes: string, more: Partial<OwnOpening>): RoomMeasure =>
  measured({
    shape: size(`12'`, `10'`),
    ceiling: flat(`9'`),
    openings: [opening('X1', kind, 'north', `3'`, sizes, more)],
  });

const halfRound = { is: 'arch', rise: len(`1'-6"`) } as const;
const raked = { is: 'rake', low: 'left', to: len(`5'`) } as const;
const inches3 = option([{ unit: 'lin ft' }], {
  face: { text: '3"', value: { kind: 'length', length: fromInches(3) } },
});

const taken = (measure: RoomMeasure, at: string, by: string, product: Option) => {
  const chosen = selection(at);
  const { places } = resolvePlaces(chosen, measure);
  return takeOff({ selection: chosen, category: category(by), measure }, places, product).takeoffs[0];
};

const placeOf = (measure: RoomMeasure, at: string, product = option([{ unit: 'lin ft' }])) => {
  const [place] = taken(measure, at, 'run', product)?.places ?? [];
  if (!place) throw new Error(at);
  return place;
};

describe('casing around', () => {
  test('an arched window: two legs of 3\'-6", half a circle of 1\'-6" and a sill of 3\'-0" that runs past the legs', () => {
    const arched = roomWith('window', `3' x 5'`, { sill: len(`2'`), shape: halfRound });
    const casing = placeOf(arched, 'X1', inches3);
    expect(casing.gross).toBeCloseTo(7 + Math.PI * 1.5 + 3, 6);
    expect(casing.adjustments).toEqual([{ what: 'Corners', amount: 0.5, why: 'the sill runs past the legs' }]);
    expect(casing.why).toBe(`arched, rise 1'-6"`);
  });

  test('an arched door: legs and arch alone', () => {
    const casing = placeOf(roomWith('door', `3' x 8'`, { shape: halfRound }), 'X1', inches3);
    expect(casing.net).toBeCloseTo(2 * 6.5 + Math.PI * 1.5, 6);
    expect(casing.adjustments).toEqual([]);
  });

  test('a round window: its circle', () => {
    const casing = placeOf(roomWith('window', `2' x 2'`, { sill: len(`5'`), shape: { is: 'round' } }), 'X1', inches3);
    expect(casing.net).toBeCloseTo(Math.PI * 2, 6);
  });

  test('a raked window: 5 + 8, a head of 5 over 4, a sill of 4, and four ends of 3"', () => {
    const casing = placeOf(roomWith('window', `4' x 8'`, { sill: len(`6"`), shape: raked }), 'X1', inches3);
    expect(casing.net).toBeCloseTo(22 + 1, 6);
  });
});

describe('along the floor', () => {
  test('an arch stands on its width; a circle touches the floor in a point, and base runs on beneath it', () => {
    const base = (measure: RoomMeasure) => taken(measure, 'north', 'run', option([{}]))?.net;
    expect(base(roomWith('open', `3' x 8'`, { shape: halfRound }))).toBeCloseTo(9, 9);
    expect(base(roomWith('open', `7' x 7'`, { shape: { is: 'round' } }))).toBeCloseTo(12, 9);
  });
});

describe('corner bead around open passages', () => {
  const beadOf = (measure: RoomMeasure): number =>
    besideOf(resolvePlaces(selection('walls'), measure).places, measure)['outside-corners'];

  test('two legs and the arch, down to the floor; a circle all around', () => {
    expect(beadOf(roomWith('open', `3' x 8'`, { shape: halfRound }))).toBeCloseTo(13 + Math.PI * 1.5, 6);
    expect(beadOf(roomWith('open', `4' x 4'`, { sill: len(`3'`), shape: { is: 'round' } }))).toBeCloseTo(
      4 * Math.PI,
      6,
    );
  });
});

describe('leaves that are coated', () => {
  // 3 × 6.5 + π·2.25/2 = 23.034 a face; around 3 + 13 + 4.712 = 20.712 ft of 1 1/2" are 2.589.
  test('an arched one has the shape of its opening', () => {
    const door = { width: fromFeet(3), height: fromFeet(8), shape: halfRound };
    expect(leafFaces(door, fromInches(1.5), 1)).toBeCloseTo(2 * 23.0343 + 2.589, 3);
    // The two of a pair meet along 8'-0".
    expect(leafFaces(door, fromInches(1.5), 2)).toBeCloseTo(2 * 23.0343 + 2.589 + 2, 3);
  });
});

describe('boards and sheets around a circle', () => {
  test('what is laid on the wall is its net area, and what is cut at the window is cut away', () => {
    const measure = roomWith('window', `3' x 3'`, { sill: len(`3'`), shape: { is: 'round' } });
    const board = option([{}], {
      face: { text: '', value: { kind: 'length', length: fromInches(48) } },
      stock: { text: '', value: { kind: 'lengths', lengths: [8, 12].map(fromFeet) } },
    });
    const { places } = resolvePlaces(selection('north'), measure);
    const layout = layPlaces(places, board, category('area', { lay: 'sheets' }).measure, measure, undefined);
    // Pieces are of whole nanometres: some millionths of a square foot are lost at their edges.
    expect(layout?.surface.covered).toBeCloseTo(108 - Math.PI * 2.25, 4);
    expect(layout?.surface.cutAway).toBeCloseTo(Math.PI * 2.25, 4);
    expect(taken(measure, 'north', 'area', board)?.net).toBeCloseTo(108 - Math.PI * 2.25, 6);
  });
});
