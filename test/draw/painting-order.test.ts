import { beforeAll, describe, expect, test } from 'vitest';
import { areaOf, headings, planeOf, rectangle, spaceDistance, type Xyz } from '../../src/base/geometry/index.js';
import { drawnRoom, lookUp, type Book, type LookUp } from '../../src/core/book/index.js';
import type { RoomMeasure } from '../../src/core/model/index.js';
import { chooseView } from '../../src/draw/cutaway/choose-view.js';
import type { Facet } from '../../src/draw/cutaway/facet.js';
import { unhidden } from '../../src/draw/cutaway/hide.js';
import { sidesOf } from '../../src/draw/cutaway/outline.js';
import { railFacets, railsKey } from '../../src/draw/cutaway/railing.js';
import { sceneOf, type Scene } from '../../src/draw/cutaway/scene.js';
import { axonometry } from '../../src/draw/cutaway/view.js';
import { demoBook } from '../demo-house.js';
import { ft, measured } from './fixtures.js';
import { wrongPlaces } from './nearest.js';
import { rooms } from './rooms.js';

let book: Book;
let look: LookUp;

beforeAll(async () => {
  book = await demoBook('2026-04-20');
  look = lookUp(book);
});

function sceneFor(slug: string): Scene {
  const { measure, seen, viewFrom } = drawnRoom(look.room(slug)!, look);
  const view = chooseView(measure, sidesOf(measure), { from: viewFrom });
  return sceneOf(measure, view, railsKey(seen), () => railFacets(seen, measure));
}

function bareScene(measure: RoomMeasure): Scene {
  return sceneOf(measure, chooseView(measure, sidesOf(measure)), '', () => []);
}

describe('what is nearest is drawn last', () => {
  test('in every room of the demo', () => {
    for (const { slug } of book.rooms) expect(wrongPlaces(sceneFor(slug), 400), slug).toEqual([]);
  });

  test.each(Object.entries(rooms))('in a room of another shape: %s', (_, make) => {
    expect(wrongPlaces(bareScene(make()), 400)).toEqual([]);
  });

  test('from wherever one looks at a room with trusses, a breast and windows', () => {
    const { measure } = look.room('great-room')!;
    for (const azimuth of [10, 80, 130, 200, 260, 340])
      for (const ceiling of ['seen', 'away'] as const) {
        const scene = sceneOf(measure, { azimuth, elevation: 15, ceiling }, '', () => []);
        // Members of a truss are let into each other: no order of whole faces is right there.
        const wrong = wrongPlaces(scene, 150);
        expect(wrong, `${azimuth} ${ceiling}`).toEqual([]);
      }
  });
});

describe('what passes through each other', () => {
  const through = (): RoomMeasure =>
    measured({
      slug: 'through',
      shape: { by: 'size', eastWest: ft(16), northSouth: ft(14), open: [] },
      ceiling: { form: 'flat', height: ft(9) },
      features: [
        {
          kind: 'half-wall',
          id: 'long',
          name: 'Long',
          x: `3'`,
          y: `6'`,
          go: 'east',
          run: `8'`,
          height: `4'`,
          thickness: '6"',
        },
        {
          kind: 'half-wall',
          id: 'short',
          name: 'Short',
          x: `7'`,
          y: `3'`,
          go: 'north',
          run: `6'`,
          height: `3'`,
          thickness: '6"',
        },
        {
          ...{ kind: 'timber', id: 'beams', name: 'Beams', count: 2, length: `15'-6"`, width: '6"', depth: '10"' },
          ...{ run: 'east-west', at: `4'`, spacing: `6'`, from: '3"', underside: `7'` },
        },
        // Past the west wall, as a record can have it.
        {
          ...{ kind: 'timber', id: 'cross', name: 'Cross', count: 2, length: `13'`, width: '4"', depth: '8"' },
          ...{ run: 'north-south', at: `0'`, spacing: `8'`, from: '6"', underside: `7'-4"` },
        },
      ],
    });

  test('is cut where it does, from wherever one looks', () => {
    const measure = through();
    for (const azimuth of [25, 70, 115, 160, 205, 250, 295, 340]) {
      const scene = sceneOf(measure, { azimuth, elevation: 25, ceiling: 'away' }, '', () => []);
      expect(wrongPlaces(scene, 400), String(azimuth)).toEqual([]);
    }
  });

  test('loses what it hides of itself only where the other is nearer', () => {
    const at = { x: 0, y: 0, z: 0 };
    const upright = (u: Xyz): Facet => ({
      id: 'f',
      role: 'finish',
      places: [],
      plane: planeOf(at, u, { x: 0, y: 0, z: 1 }),
      patches: [rectangle(-2, 0, 4, 3)],
    });
    // Two sheets that cross in the upright line over the origin, seen level from the south: each hides half of the other.
    const [one, other] = [upright({ x: 0.8, y: 0.6, z: 0 }), upright({ x: 0.8, y: -0.6, z: 0 })];
    const camera = axonometry({ azimuth: -90, elevation: 0, ceiling: 'away' });
    expect(areaOf(unhidden(one, other, camera))).toBeCloseTo(6, 6);
    expect(areaOf(unhidden(other, one, camera))).toBeCloseTo(6, 6);
  });
});

describe('faces that meet', () => {
  test('the end of a wall that is cut meets its top, also on a slope', () => {
    const shed = measured({
      slug: 'shed',
      shape: { by: 'size', eastWest: ft(14), northSouth: ft(10), open: [] },
      ceiling: { form: 'shed', low: headings.west, plate: ft(7), pitch: { rise: 9, run: 12 } },
    });
    for (const measure of [shed, ...Object.values(rooms).map((make) => make())]) {
      const { laid } = bareScene(measure);
      const tops = laid.filter(({ facet }) => facet.id.includes('/top-'));
      for (const { facet, corners } of laid.filter((one) => one.facet.id.includes('/end-'))) {
        const own = tops.filter((top) => top.facet.id.startsWith(`${facet.id.split('/')[0]}/`));
        const upper = corners.toSorted((one, other) => other.z - one.z).slice(0, 2);
        for (const corner of own.length > 0 ? upper : []) {
          const apart = own.flatMap((top) => top.corners.map((other) => spaceDistance(other, corner)));
          expect(Math.min(...apart), `${measure.room} ${facet.id}`).toBeLessThan(0.02);
        }
      }
    }
  });

  test('a frame around curved glass is one piece with a hole', () => {
    const { laid } = bareScene(rooms.chapel());
    const sashes = laid.filter(({ facet }) => facet.id.endsWith('/sash'));
    expect(sashes.length).toBeGreaterThan(0);
    for (const { facet } of sashes) {
      expect(facet.patches, facet.id).toHaveLength(1);
      expect(facet.patches[0]!.holes, facet.id).toHaveLength(1);
    }
  });
});
