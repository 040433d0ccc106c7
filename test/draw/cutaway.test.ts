import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { spaceDot } from '../../src/base/geometry/index.js';
import { svgText } from '../../src/base/svg/index.js';
import { drawnRoom, lookUp, type Book, type Instead, type LookUp, type SeenFinish } from '../../src/core/book/index.js';
import { solidSpace, solidsOf } from '../../src/core/feature/index.js';
import type { Length } from '../../src/base/units/index.js';
import { chooseView } from '../../src/draw/cutaway/choose-view.js';
import { finishWords, lookOf, looksOf, partLook } from '../../src/draw/cutaway/look.js';
import { placeKeys } from '../../src/draw/cutaway/keys.js';
import { decalsOf } from '../../src/draw/cutaway/on-wall.js';
import { layFacet } from '../../src/draw/cutaway/order.js';
import { sidesOf } from '../../src/draw/cutaway/outline.js';
import { railFacets, railsKey } from '../../src/draw/cutaway/railing.js';
import { sceneOf, type Scene } from '../../src/draw/cutaway/scene.js';
import { axonometry } from '../../src/draw/cutaway/view.js';
import { drawCutaway, looksSame, printPalette, type Cutaway, type View } from '../../src/draw/index.js';
import { demoBook } from '../demo-house.js';
import { atMost, processorTime } from '../processor-time.js';
import { covers } from './nearest.js';

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
  const view = chooseView(measure, sidesOf(measure), { from: viewFrom });
  return sceneOf(measure, view, railsKey(seen), () => railFacets(seen, measure));
}

function draw(slug: string, options: { readonly instead?: Instead; readonly view?: View } = {}): Cutaway {
  return drawCutaway(roomOf(slug, options.instead), {
    id: 'c',
    palette: printPalette,
    ...(options.view && { view: options.view }),
  });
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
      const { laid, camera } = sceneFor(slug);
      const looks = looksOf(seen);
      const covered = laid.map((one) => ({ laid: one, decals: decalsOf(one.facet, measure, looks) }));
      for (const { spot, finish } of placeKeys(covered, looks, { measure, camera }, 0.5)) {
        if (!spot) continue;
        const last = covered.filter((one) => covers(one.laid, spot)).at(-1)!;
        const { facet } = last.laid;
        const on = last.decals.findLast(
          ({ role, patches }) => role !== 'panel' && covers(layFacet({ ...facet, patches }, camera), spot),
        );
        const role = on?.role === 'knob' ? 'hardware' : (on?.role as 'base' | 'trim' | undefined);
        const shown = on && role ? partLook(role, [on.place], looks)! : lookOf(facet, looks);
        expect(shown.is === 'bare' ? 'nothing' : finishWords(shown), slug).toBe(finish);
      }
    }
  });

  test('names all that is seen of a room: each finish has a key, or is said not to be drawn', () => {
    for (const { slug } of book.rooms) {
      const { seen } = roomOf(slug);
      const { keys, unseen } = draw(slug);
      const words = [...keys, ...unseen].map(({ finish }) => finish).join('\n');
      const looks = looksOf(seen);
      for (const { role, name, places } of seen) {
        // What a board or a tile hides is not seen.
        const isHidden =
          ['coat', 'texture', 'surface'].includes(role) &&
          places.every((place) => {
            const look = looks.surface([place]);
            return look.is === 'bare' || !finishWords(look).includes(name);
          });
        if (!isHidden && role !== 'unit') expect(words, `${slug}: ${name}`).toContain(name);
      }
    }
  });

  test('keeps names with commas apart, and shows a color whose texture is to be decided', () => {
    const found = draw('great-room').keys.map(({ finish }) => finish);
    expect(found).toContain('Hand trowel, soft + Tallow, matte');
    const paint = look.selectionsOf(look.room('study')!).find(({ id }) => id === 'study/paint/walls')!;
    const [tallow, juniper] = ['matte-tallow', 'eggshell-juniper'].map((option) =>
      draw('study', { instead: new Map([[paint.id, option]]) }),
    );
    expect(tallow!.keys.map(({ finish }) => finish)).toContain('Tallow, matte + Wall texture: to be decided');
    expect(looksSame(tallow!, juniper!)).toBe(false);
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

  test('of another version of an option’s record shows its rails anew, and stays small with posts that nobody could tell apart', () => {
    const railing = look.selectionsOf(look.room('gallery')!).find(({ category }) => category === 'railing')!;
    const now = roomOf('gallery', new Map([[railing.id, 'cable']]));
    const closer = now.seen.map((one) => ({
      ...one,
      ...(one.rails && {
        rails: one.rails.map((rail) => ({
          ...rail,
          pieces: rail.pieces.map((piece) => ({
            ...piece,
            posts: Array.from({ length: 300 }, (_, i) => ((piece.length * i) / 299) as Length),
          })),
        })),
      }),
    }));
    expect(railsKey(closer)).not.toBe(railsKey(now.seen));
    const text = (seen: readonly SeenFinish[]) =>
      svgText(drawCutaway({ ...now, seen }, { id: 'c', palette: printPalette }).drawing.svg);
    expect(text(closer)).not.toBe(text(now.seen));
    expect(text(closer).length).toBeLessThan(60_000);
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

  test('is another where nothing but a pattern on the walls differs', () => {
    const texture = look.selectionsOf(look.room('great-room')!).find(({ category }) => category === 'wall-texture')!;
    const [peel, trowel] = ['light-orange-peel', 'hand-trowel'].map((option) =>
      draw('great-room', { instead: new Map([[texture.id, option]]) }),
    );
    expect(looksSame(peel!, trowel!)).toBe(false);
    expect(looksSame(peel!, draw('great-room', { instead: new Map([[texture.id, 'light-orange-peel']]) }))).toBe(true);
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
    const { azimuth } = chooseView(measure, sidesOf(measure), { from: 'north' });
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
