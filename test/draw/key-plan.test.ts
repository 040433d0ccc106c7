import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { areaOf, intersect, patchFrom, ringInFeet, type Patch, type Xy } from '../../src/base/geometry/index.js';
import { svgText, type SvgNode } from '../../src/base/svg/index.js';
import { feet } from '../../src/base/units/index.js';
import { keyLevels, lookUp, type Book, type KeyLevel, type KeyRoom } from '../../src/core/book/index.js';
import { drawKeyPlan, keyPlanNotes, printPalette, type KeyPlanOptions, type Shade } from '../../src/draw/index.js';
import { cutsOf } from '../../src/draw/key-plan/cuts.js';
import { gapIn } from '../../src/draw/key-plan/gap.js';
import { lineThrough, type WallLine } from '../../src/draw/plan/wall-line.js';
import { overlaps } from '../../src/draw/convex.js';
import { scalesFrom } from '../../src/draw/scale.js';
import { Sheet } from '../../src/draw/sheet.js';
import { demoBook } from '../demo-house.js';
import { atMost, processorTime } from '../processor-time.js';
import { keyHouse } from './key-house.js';
import { collisions, linesOf, nodesOf, outside, textsOf } from './reading.js';

const details = ['whole', 'numbers'] as const;
const boxes = { whole: { width: 11, height: 9 }, numbers: { width: 2.8, height: 3.6 } };

function options(detail: KeyPlanOptions['detail'], shades: Readonly<Record<string, Shade>> = {}): KeyPlanOptions {
  return {
    id: 'key',
    palette: printPalette,
    detail,
    bare: detail === 'numbers',
    box: boxes[detail],
    layers: [{ className: 'asked', rooms: new Map(Object.entries(shades)) }],
    linkOf: (room) => ({ href: `rooms/${room}.html`, words: `To ${room}` }),
  };
}

const levelsOf = (book: Book): readonly KeyLevel[] => keyLevels(lookUp(book));

let demo: readonly KeyLevel[];
const odd = levelsOf(keyHouse());
beforeAll(async () => {
  demo = levelsOf(await demoBook('2026-04-23'));
});

const lines = (svg: SvgNode): string => `${svgText(svg).replace(/></g, '>\n<')}\n`;

describe('key plans, reviewed by eye', () => {
  it('a level with a bowed wall and a cut corner', async () => {
    const { svg } = drawKeyPlan(odd[0]!, options('whole', { study: 'late', hall: 'open' }));
    await expect(lines(svg)).toMatchFileSnapshot('golden/key-plan.svg');
  });

  it('the same small', async () => {
    const { svg } = drawKeyPlan(odd[0]!, options('numbers', { parlor: 'here' }));
    await expect(lines(svg)).toMatchFileSnapshot('golden/key-plan-numbers.svg');
  });

  it('a room that nothing joins to the others', async () => {
    const apart = drawKeyPlan(odd[1]!, options('whole'));
    expect(apart.title).toBe('Main level, drawn apart');
    await expect(lines(apart.svg)).toMatchFileSnapshot('golden/key-plan-apart.svg');
  });
});

describe.each(details)('%s', (detail) => {
  it('shows every room of a level, each floor leading to its room', () => {
    for (const level of [...demo, ...odd]) {
      const links = nodesOf(drawKeyPlan(level, options(detail)).svg).filter(({ name }) => name === 'a');
      expect(links.map(({ attributes }) => attributes['href'])).toEqual(
        level.rooms.map(({ slug }) => `rooms/${slug}.html`),
      );
      for (const link of links) {
        expect(link.attributes['aria-label']).toMatch(/^To /u);
        expect(nodesOf(link).some(({ name }) => name === 'title')).toBe(true);
      }
    }
  });

  it('names every room by its number, at 9 pixels or more, no word on another', () => {
    for (const level of [...demo, ...odd]) {
      const { svg } = drawKeyPlan(level, options(detail));
      const texts = textsOf(svg);
      // A pixel is 1/96 of an inch, a point 1/72.
      expect(texts.filter(({ size }) => (size * 96) / 72 < 9)).toEqual([]);
      for (const { number } of level.rooms) expect(texts.map(({ content }) => content)).toContain(number);
      expect(collisions(svg)).toEqual([]);
      expect(outside(svg)).toEqual([]);
    }
  });
});

describe('floors', () => {
  it('are marked by a color and by a pattern', () => {
    const { svg } = drawKeyPlan(odd[0]!, options('whole', { study: 'late', hall: 'open', parlor: 'changed' }));
    const nodes = nodesOf(svg);
    const patterns = nodes.filter(({ name }) => name === 'pattern');
    expect(patterns.map(({ attributes }) => attributes['id'])).toEqual(['key-open', 'key-late', 'key-changed']);
    const looks = patterns.map((pattern) => JSON.stringify(pattern.children));
    expect(new Set(looks).size).toBe(3);
    for (const look of looks) expect(look).toMatch(/stroke":"#/u);
    const study = nodes.find(({ attributes }) => attributes['href'] === 'rooms/study.html')!;
    expect(nodesOf(study).find(({ attributes }) => attributes['class'] === 'asked')?.attributes['fill']).toBe(
      'url(#key-late)',
    );
  });

  it('are an image where they lead nowhere, else a group of links', () => {
    const { id, palette, detail, layers } = options('numbers');
    expect(drawKeyPlan(odd[0]!, { id, palette, detail, layers }).svg.attributes['role']).toBe('img');
    expect(drawKeyPlan(odd[0]!, options('numbers')).svg.attributes['role']).toBe('group');
  });
});

describe('what is over a room', () => {
  const timbers = `  - { kind: timber, id: beams, name: Beams, count: 3, length: 12'-0", width: 6", depth: 10", species: Fir }
  - { kind: timber, id: posts, name: Posts, count: 2, length: 3'-0", width: 6", depth: 6", species: Fir }
`;
  const skylight = `  - { kind: skylight, id: sky, name: Sky, x: 5'-0", y: 1'-0", width: 2'-0", length: 2'-0", depth: 1'-0" }\n`;
  const over = levelsOf(keyHouse(timbers + skylight))[0]!;
  const dashed = (svg: SvgNode): readonly SvgNode[] =>
    nodesOf(svg).filter(({ attributes }) => attributes['stroke-dasharray'] !== undefined);
  const more = (detail: KeyPlanOptions['detail']): number =>
    dashed(drawKeyPlan(over, options(detail)).svg).length - dashed(drawKeyPlan(odd[0]!, options(detail)).svg).length;

  it('is dashed at large: two sides of each beam that spans, a skylight with its cross, no posts', () => {
    expect(more('whole')).toBe(3 * 2 + 3);
    expect(more('numbers')).toBe(0);
  });

  it('is told in words where it is drawn', () => {
    const words = ['dashed over a room: its timbers', 'dashed and crossed: a skylight'];
    expect(keyPlanNotes(over, 'whole')).toEqual(expect.arrayContaining(words));
    expect(keyPlanNotes(over, 'numbers')).not.toEqual(expect.arrayContaining(words.slice(0, 1)));
    expect(keyPlanNotes(levelsOf(keyHouse(timbers.split('\n')[1]! + '\n'))[0]!, 'whole')).toHaveLength(1);
  });

  it('is crossed by no name where there is room beside it', () => {
    const { svg } = drawKeyPlan(over, options('whole'));
    const name = textsOf(svg).find(({ content }) => content === 'Parlor')!;
    const lines = dashed(svg).filter(({ attributes }) => attributes['stroke'] === printPalette.muted);
    expect(lines).toHaveLength(9);
    expect(lines.flatMap(linesOf).filter((line) => overlaps(line, name.box))).toEqual([]);
  });
});

describe('true north', () => {
  it('turns the arrow, not the house', () => {
    expect(svgText(drawKeyPlan(odd[0]!, options('whole')).svg)).toMatch(/<g transform="rotate\(20 /u);
    expect(svgText(drawKeyPlan(demo[0]!, options('whole')).svg)).not.toMatch(/<g transform="rotate/u);
  });
});

describe('openings', () => {
  it('are cut through a straight wall of any direction from face to face, as wide as they are', () => {
    const degrees = fc.integer({ min: 0, max: 359 });
    const figure = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(degrees, figure(2, 30), figure(1, 60), figure(5, 60), (turn, thick, at, width) => {
        const way = { x: Math.cos((turn * Math.PI) / 180), y: Math.sin((turn * Math.PI) / 180) };
        const run = 130;
        const straight = lineThrough([0, 0], [way.x * run, way.y * run]);
        const corner = (u: number, v: number): Xy => {
          const [x, y] = straight.at(u, v);
          return { x, y };
        };
        // Other walls go on from both ends, and one stands farther out.
        const walls: Patch[] = [
          patchFrom([corner(-9, 0), corner(run + 9, 0), corner(run + 9, thick), corner(-9, thick)]),
          patchFrom([corner(-9, thick + 40), corner(run, thick + 40), corner(run, thick + 50), corner(-9, thick + 50)]),
        ];
        const line = { ...straight, wall: {}, bends: () => [], ahead: () => straight.along } as unknown as WallLine;
        const { outline, depth } = gapIn(line, { from: at, to: at + width }, walls, 0.75);
        expect(depth).toBeCloseTo(thick, 6);
        const hoped = [corner(at, 0), corner(at + width, 0), corner(at + width, thick), corner(at, thick)];
        outline.forEach(([x, y], index) => {
          expect(Math.hypot(x - hoped[index]!.x, y - hoped[index]!.y)).toBeLessThan(1e-6);
        });
      }),
    );
  });

  it('lie in the wall between both their rooms, with a jamb on each face', () => {
    const seen: string[] = [];
    for (const level of [...demo, ...odd]) {
      const sheet = new Sheet(scalesFrom(48)[0]!);
      const point = feet(1e12 as never) / (1e12 * sheet.perNanometre);
      const walls = level.walls.map(({ outline, holes }) => patchFrom(ringInFeet(outline), holes.map(ringInFeet)));
      const inPoints = walls.map(({ outline, holes }) => {
        const turned = (ring: readonly Xy[]): Xy[] => ring.map(({ x, y }) => ({ x: x / point, y: -y / point }));
        return patchFrom(turned(outline), holes.map(turned));
      });
      for (const { room, cuts } of cutsOf(sheet, level, inPoints)) {
        for (const { opening, gap, isAbove } of cuts) {
          const other = level.rooms.find(({ slug }) => slug === opening?.to);
          if (!opening || !other || isAbove) continue;
          seen.push(opening.mark);
          const corners = gap.outline.map(([x, y]): Xy => ({ x: x * point, y: -y * point }));
          const cut = patchFrom(corners);
          expect(areaOf(walls.flatMap((wall) => intersect([wall], cut))), opening.mark).toBeCloseTo(areaOf([cut]), 3);
          const [left, right, farRight, farLeft] = corners as [Xy, Xy, Xy, Xy];
          expect(Math.hypot(right.x - left.x, right.y - left.y), opening.mark).toBeCloseTo(feet(opening.width), 3);
          for (const jamb of [left, right]) expect(offOutline(jamb, room), opening.mark).toBeLessThan(0.01);
          for (const jamb of [farLeft, farRight]) expect(offOutline(jamb, other), opening.mark).toBeLessThan(0.01);
        }
      }
    }
    expect(seen.length).toBeGreaterThan(20);
  });
});

/** Feet from a place to the nearest side of a room where it stands. */
function offOutline({ x, y }: Xy, { plan, at }: KeyRoom): number {
  const ring = ringInFeet(plan).map((corner) => ({ x: corner.x + feet(at.x), y: corner.y + feet(at.y) }));
  return Math.min(
    ...ring.map((from, index) => {
      const to = ring[(index + 1) % ring.length]!;
      const [dx, dy] = [to.x - from.x, to.y - from.y];
      const share = Math.max(0, Math.min(1, ((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy)));
      return Math.hypot(x - from.x - share * dx, y - from.y - share * dy);
    }),
  );
}

describe('speed', () => {
  it('draws a level of the demo in a few hundredths of a second', () => {
    // Another outline is another subject: nothing that was drawn before serves.
    const fastest = Math.min(
      ...Array.from({ length: 12 }, () =>
        processorTime(() => drawKeyPlan({ ...demo[0]!, outline: [...demo[0]!.outline] }, options('whole'))),
      ),
    );
    expect(fastest).toBeLessThan(atMost(100, fastest));
  });
});
