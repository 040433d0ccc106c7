import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { areaOf, planeOf, rectangle, spaceDot, type Xyz } from '../../src/base/geometry/index.js';
import { svgText } from '../../src/base/svg/index.js';
import { drawnRoom, lookUp, type Book, type Instead, type LookUp } from '../../src/core/book/index.js';
import { solidSpace, solidsOf } from '../../src/core/feature/index.js';
import type { RoomMeasure } from '../../src/core/model/index.js';
import { chooseView } from '../../src/draw/cutaway/choose-view.js';
import type { Facet } from '../../src/draw/cutaway/facet.js';
import { unhidden } from '../../src/draw/cutaway/hide.js';
import { lookOf, looksOf } from '../../src/draw/cutaway/look.js';
import { placeKeys } from '../../src/draw/cutaway/keys.js';
import type { Laid } from '../../src/draw/cutaway/order.js';
import { sidesOf } from '../../src/draw/cutaway/outline.js';
import { railFacets, railsKey } from '../../src/draw/cutaway/railing.js';
import { sceneOf, type Scene } from '../../src/draw/cutaway/scene.js';
import { axonometry } from '../../src/draw/cutaway/view.js';
import { drawCutaway, printPalette, type Cutaway, type View } from '../../src/draw/index.js';
import { isInside } from '../../src/draw/inside.js';
import { seeded } from '../../src/draw/swatch/random.js';
import { demoBook } from '../demo-house.js';
import { atMost, processorTime } from '../processor-time.js';
import { ft, measured } from './fixtures.js';
import { rooms } from './rooms.js';

let book: Book;
let look: LookUp;

beforeAll(async () => {
  book = await demoBook('2026-04-20');
  look = lookUp(book);
});

function roomOf(slug: string, instead?: Instead) {
  return drawnRoom(look.room(slug)!, look, instead);
}

function sceneFor(slug: string): Scene {
  const { measure, seen, viewFrom } = roomOf(slug);
  const view = chooseView(measure, sidesOf(measure), viewFrom);
  return sceneOf(measure, view, railsKey(seen), () => railFacets(seen, measure));
}

function bareScene(measure: RoomMeasure): Scene {
  return sceneOf(measure, chooseView(measure, sidesOf(measure)), '', () => []);
}

function draw(slug: string, options: { readonly instead?: Instead; readonly view?: View } = {}): Cutaway {
  return drawCutaway(roomOf(slug, options.instead), {
    id: 'c',
    palette: printPalette,
    ...(options.view && { view: options.view }),
  });
}

function covers({ rings }: Laid, spot: readonly [number, number]): boolean {
  return rings.filter((ring) => isInside(spot, ring)).length % 2 === 1;
}

/** How far toward the viewer a facet's plane is at a place of the sheet. */
function depthAt({ facet: { plane } }: Laid, [x, y]: readonly [number, number], { camera }: Scene): number {
  const { right, up, toward } = camera;
  const start: Xyz = { x: right.x * x - up.x * y, y: right.y * x - up.y * y, z: right.z * x - up.z * y };
  return (spaceDot(plane.at, plane.faces) - spaceDot(start, plane.faces)) / spaceDot(toward, plane.faces);
}

/** Places of the sheet where what is drawn last is not what is nearest, of so many looked at. */
function wrongPlaces(scene: Scene, count: number): readonly string[] {
  const random = seeded('places');
  const bounds = scene.laid.flatMap(({ rings }) => rings.flat());
  const xs = bounds.map(([x]) => x);
  const ys = bounds.map(([, y]) => y);
  const wrong: string[] = [];
  for (let i = 0; i < count; i += 1) {
    const spot = [
      random.between(Math.min(...xs), Math.max(...xs)),
      random.between(Math.min(...ys), Math.max(...ys)),
    ] as const;
    const here = scene.laid.filter((one) => covers(one, spot));
    const last = here.at(-1);
    if (!last) continue;
    const nearest = here.reduce((best, one) => (depthAt(one, spot, scene) > depthAt(best, spot, scene) ? one : best));
    const behind = depthAt(nearest, spot, scene) - depthAt(last, spot, scene);
    if (behind > 0.02) wrong.push(`${last.facet.id} over ${nearest.facet.id} by ${behind.toFixed(2)} ft`);
  }
  return wrong;
}

describe('an axonometry', () => {
  const angle = fc.double({ min: -360, max: 360, noNaN: true });
  const place = fc.record({ x: coordinate(), y: coordinate(), z: coordinate() });

  function coordinate() {
    return fc.double({ min: -50, max: 50, noNaN: true });
  }

  test('is affine: a place halfway in a room lies halfway on the sheet', () => {
    fc.assert(
      fc.property(angle, fc.double({ min: 5, max: 80, noNaN: true }), place, place, (azimuth, elevation, a, b) => {
        const { spot } = axonometry({ azimuth, elevation, ceiling: 'away' });
        const middle = spot({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, z: (a.z + b.z) / 2 });
        const [from, to] = [spot(a), spot(b)];
        expect(middle[0]).toBeCloseTo((from[0] + to[0]) / 2, 9);
        expect(middle[1]).toBeCloseTo((from[1] + to[1]) / 2, 9);
      }),
    );
  });

  test('shortens what goes away from the viewer, and nothing else', () => {
    const { spot } = axonometry({ azimuth: -90, elevation: 30, ceiling: 'away' });
    // East is the sheet's right, a foot up is cos 30°, a foot away sin 30°.
    expect(spot({ x: 1, y: 0, z: 0 })).toEqual([expect.closeTo(1, 9), expect.closeTo(0, 9)]);
    expect(spot({ x: 0, y: 0, z: 1 })[1]).toBeCloseTo(-Math.cos(Math.PI / 6), 9);
    expect(spot({ x: 0, y: 1, z: 0 })[1]).toBeCloseTo(-0.5, 9);
  });
});

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

describe('a picture', () => {
  test('shows each wall that faces the viewer, the floor, and each face of a feature that faces the viewer', () => {
    for (const room of book.rooms) {
      const { camera, laid, standing } = sceneFor(room.slug);
      const drawn = new Set(laid.flatMap(({ facet }) => facet.places));
      for (const { wall } of standing) if (wall.net > 0) expect(drawn, room.slug).toContain(wall.id);
      expect(drawn, room.slug).toContain('floor');
      const away = new Set(
        laid.filter(({ facet }) => facet.role === 'trace').map(({ facet }) => facet.id.split('/')[0]),
      );
      for (const feature of room.measure.features.filter(({ id }) => !away.has(id))) {
        const faces = solidsOf(feature, solidSpace(room.measure));
        const facing = faces.filter(({ plane }) => spaceDot(plane.faces, camera.toward) > 0.01);
        const shown = laid.filter(({ facet }) => facet.id.startsWith(`${feature.id}/`) && facet.role !== 'rail');
        expect(shown, `${room.slug} ${feature.id}`).toHaveLength(facing.length);
      }
    }
  });

  test('has each number on its own finish, and nothing over it', () => {
    for (const { slug } of book.rooms) {
      const { measure, seen } = roomOf(slug);
      const { laid } = sceneFor(slug);
      const looks = looksOf(seen);
      for (const { spot, finish, isOpen } of placeKeys(laid, looks, measure, 0.5)) {
        if (!spot) continue;
        const last = laid.filter((one) => covers(one, spot)).at(-1);
        const shown = last && lookOf(last.facet, looks);
        const names = shown && shown.is !== 'bare' ? shown.names.join(', ') : 'nothing';
        expect(isOpen ? `${names}: to be decided` : names, slug).toBe(finish);
      }
    }
  });

  test('stays under 60 kB', () => {
    for (const { slug } of book.rooms) expect(svgText(draw(slug).drawing.svg).length, slug).toBeLessThan(60_000);
  });

  test('takes little time: all rooms of the house, and one again with another stone', () => {
    const fresh = new Map(
      book.rooms.map(({ slug }) => [slug, { ...roomOf(slug), measure: { ...look.room(slug)!.measure } }]),
    );
    const drawAgain = (slug: string) => drawCutaway(fresh.get(slug)!, { id: 'c', palette: printPalette });
    const all = processorTime(() => book.rooms.forEach(({ slug }) => drawAgain(slug)));
    expect(all).toBeLessThan(atMost(1500, all));
    drawAgain('great-room');
    const again = processorTime(() => drawAgain('great-room'));
    expect(again).toBeLessThan(atMost(60, again));
  });

  test('is the same, byte for byte, each time', () => {
    const text = () => svgText(draw('great-room').drawing.svg);
    expect(text()).toBe(text());
  });

  test('differs by nothing but its finish where another option stands', () => {
    const breast = look.selectionsOf(look.room('great-room')!).find(({ category }) => category === 'stone-facing')!;
    const [one, other] = ['thin-natural-ledge', 'thin-natural-ashlar'].map((option) =>
      draw('great-room', { instead: new Map([[breast.id, option]]) }),
    );
    const outlinesOf = ({ drawing }: Cutaway) =>
      drawing.svg.children.flatMap((node) =>
        typeof node !== 'string' && node.name === 'path' && !String(node.attributes['fill']).startsWith('url')
          ? [node.attributes['d']]
          : [],
      );
    expect(outlinesOf(other!)).toEqual(outlinesOf(one!));
    const changed = differing(one!, other!);
    expect(changed.length).toBeGreaterThan(3);
    const stone = sceneFor('great-room').laid.filter(({ facet }) => facet.places.includes('breast')).length;
    // A face of stone is its ground, its pattern and its shadow; nothing else is another.
    expect(changed.length).toBeLessThanOrEqual(2 * stone);
  });

  test('hatches what is open, and says so in its list and in its words', () => {
    const { drawing, keys } = draw('great-room');
    const open = keys.filter(({ isOpen }) => isOpen).map(({ at, finish }) => `${at}: ${finish}`);
    expect(open).toContain('Chimney breast: Stone facing: to be decided');
    expect(drawing.description).toContain('Stone facing: to be decided');
    expect(drawing.description).toContain('A drawing, not the sample.');
  });
});

function differing(one: Cutaway, other: Cutaway): readonly string[] {
  const texts = [one, other].map(({ drawing }) =>
    drawing.svg.children.map((node) => (typeof node === 'string' ? node : svgText(node))),
  );
  const [a = [], b = []] = texts;
  return a.filter((text, i) => !text.startsWith('<defs') && !text.startsWith('<desc') && text !== b[i]);
}

describe('the view', () => {
  test('is from where the record says', () => {
    const { measure } = look.room('kitchen')!;
    const { azimuth } = chooseView(measure, sidesOf(measure), 'north');
    expect(Math.sin((azimuth * Math.PI) / 180)).toBeGreaterThan(0.5);
  });

  test('is low where a slope is seen, and high into a room with a level ceiling', () => {
    const viewOf = (slug: string) => draw(slug).view;
    expect(viewOf('great-room')).toMatchObject({ ceiling: 'seen' });
    expect(viewOf('great-room').elevation).toBeLessThan(25);
    expect(viewOf('laundry')).toMatchObject({ ceiling: 'away', elevation: 31 });
  });
});

test('facets of six rooms, back to front', async () => {
  const slugs = ['great-room', 'gallery', 'stair-hall', 'kitchen', 'primary-bath', 'dining'];
  const text = slugs
    .map((slug) => {
      const { seen } = roomOf(slug);
      const looks = looksOf(seen);
      const lines = sceneFor(slug).laid.map(({ facet, rings }) => {
        const shown = lookOf(facet, looks);
        const name = shown.is === 'bare' ? '' : `  ${shown.names.join(', ')}${shown.is === 'open' ? ' (open)' : ''}`;
        const corners = rings.reduce((sum, ring) => sum + ring.length, 0);
        return `${facet.id} ${facet.role} ${corners}${name}`;
      });
      return [`# ${slug}`, ...lines].join('\n');
    })
    .join('\n\n');
  await expect(`${text}\n`).toMatchFileSnapshot('golden/cutaway-facets.txt');
});
