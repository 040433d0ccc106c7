import { describe, expect, it } from 'vitest';
import { shortPath, svgText, type SvgNode } from '../../src/base/svg/index.js';
import { roomViews, screenPalette, type RoomView } from '../../src/draw/index.js';
import { drawnRoom, lookUp } from '../../src/core/book/index.js';
import { keyHouse } from './key-house.js';
import { extentOf, extentsMeet } from '../../src/draw/convex.js';
import { cornersOf, nodesOf, pathCorners } from './reading.js';

const book = keyHouse();
const views = book.rooms.flatMap((room) => {
  const { plan, ceiling, sections, features, walls } = roomViews(drawnRoom(room, lookUp(book)));
  return [plan, ceiling, ...sections, ...features, ...walls];
});

const drawn = (view: RoomView, medium: 'paper' | 'screen'): SvgNode =>
  view.draw({ id: 'draw', palette: screenPalette, medium }).svg;

function withoutWords(node: SvgNode): readonly SvgNode[] {
  const children = node.children.filter((child) => typeof child !== 'string');
  return node.attributes['class'] === 'words' ? [] : [node, ...children.flatMap(withoutWords)];
}

/** What is written, in any order. */
function words(svg: SvgNode): readonly string[] {
  return nodesOf(svg)
    .filter(({ name }) => name === 'text')
    .map(({ children }) => children.join(''))
    .sort();
}

describe('a drawing for a screen', () => {
  it('names no scale, which a drawing for paper does, and says all else', () => {
    for (const view of views) {
      const [paper, screen] = [words(drawn(view, 'paper')), words(drawn(view, 'screen'))];
      expect(paper.filter((text) => text.startsWith('Scale '))).toHaveLength(1);
      expect(screen).toEqual(paper.filter((text) => !text.startsWith('Scale ')));
    }
  });

  it('takes at most two thirds of the letters, and fewer nodes', () => {
    const sum = (medium: 'paper' | 'screen', of: (svg: SvgNode) => number): number =>
      views.reduce((total, view) => total + of(drawn(view, medium)), 0);
    expect(sum('screen', (svg) => svgText(svg).length) / sum('paper', (svg) => svgText(svg).length)).toBeLessThan(0.67);
    expect(sum('screen', (svg) => nodesOf(svg).length)).toBeLessThan(sum('paper', (svg) => nodesOf(svg).length) * 0.8);
  });

  it('says where what is left of it lies without its words, and gives it no more than some air', () => {
    for (const view of views) {
      const { plain, svg } = view.draw({ id: 'draw', palette: screenPalette });
      const [x = 0, y = 0, wide = 0] = String(svg.attributes['viewBox']).split(' ').map(Number);
      const corners = withoutWords(svg).flatMap((node) =>
        /^(path|circle|line|rect)$/u.test(node.name) ? cornersOf(node) : [],
      );
      const [xs, ys] = [corners.map(([one]) => one - x), corners.map(([, one]) => one - y)];
      const [left, top] = [Math.min(...xs), Math.min(...ys)];
      const of = { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
      const air = 4;
      expect(plain!.left * wide, view.name).toBeCloseTo(of.left - air, 0);
      expect(plain!.top * wide, view.name).toBeCloseTo(of.top - air, 0);
      expect(plain!.width * wide, view.name).toBeCloseTo(of.width + 2 * air, 0);
      expect(plain!.height * wide, view.name).toBeCloseTo(of.height + 2 * air, 0);
    }
  });

  it('has every figure where it is on paper, and paints what lies on one another in the same order', () => {
    for (const view of views) {
      const [paper, screen] = [figuresOf(drawn(view, 'paper')), figuresOf(drawn(view, 'screen'))];
      expect(screen.length).toBe(paper.length);
      const free = new Set(screen.keys());
      const order = paper.map((figure) => {
        const found = [...free].find((index) => isSame(figure, screen[index]!)) ?? -1;
        expect(found, `${view.name}: ${figure.look} ${figure.corners.join(' ')}`).toBeGreaterThanOrEqual(0);
        free.delete(found);
        return found;
      });
      const swapped = paper.flatMap((under, i) =>
        paper
          .slice(i + 1)
          .filter((over, k) => order[i]! > order[i + 1 + k]! && under.look !== over.look && lieOn(under, over))
          .map((over) => `${view.name}: ${over.look} under ${under.look}`),
      );
      expect(swapped).toEqual([]);
    }
  });
});

interface Figure {
  readonly look: string;
  readonly isLine: boolean;
  readonly corners: readonly (readonly [number, number])[];
}

/** What is painted but words, in its order: lines one by one, all else as it is. */
function figuresOf(svg: SvgNode, given: SvgNode['attributes'] = {}): readonly Figure[] {
  const look = { ...given, ...svg.attributes };
  if (svg.name === 'text' || svg.name === 'title' || svg.name === 'desc') return [];
  if (svg.name === 'svg' || svg.name === 'g')
    return svg.children.flatMap((child) =>
      typeof child === 'string' ? [] : figuresOf(child, svg.name === 'svg' ? {} : look),
    );
  const key = ['fill', 'stroke', 'stroke-width', 'stroke-dasharray'].map((name) => look[name]).join(' ');
  const isLine = look['fill'] === 'none';
  if (svg.name !== 'path') return [{ look: key, isLine, corners: unrepeated(cornersOf(svg)) }];
  const parts =
    isLine || !look['stroke']
      ? outlines(pathCorners, String(svg.attributes['d']))
      : [pathCorners(String(svg.attributes['d']))];
  return parts.map((corners) => ({ look: key, isLine, corners: unrepeated(corners) }));
}

/** Corners of each outline of a path, by those of all that is before it. */
function outlines(read: typeof pathCorners, d: string): ReturnType<typeof pathCorners>[] {
  const starts = [...d.matchAll(/m/gi)].map(({ index }) => index);
  const ends = starts.map((_, i) => read(d.slice(0, starts[i + 1] ?? d.length)).length);
  const all = read(d);
  return ends.map((end, i) => all.slice(i === 0 ? 0 : ends[i - 1], end));
}

function unrepeated(corners: Figure['corners']): Figure['corners'] {
  return corners.filter(([x, y], i) => i === 0 || Math.hypot(x - corners[i - 1]![0], y - corners[i - 1]![1]) > 0.16);
}

function isSame(one: Figure, other: Figure): boolean {
  return (
    one.look === other.look &&
    one.corners.length === other.corners.length &&
    one.corners.every(([x, y], i) => Math.hypot(x - other.corners[i]![0], y - other.corners[i]![1]) < 0.12)
  );
}

/** Does one cover the other where their boxes meet? */
function lieOn(one: Figure, other: Figure): boolean {
  if (one.isLine && other.isLine) return false;
  return extentsMeet(extentOf(one.corners), extentOf(other.corners), 0);
}

describe('a short path', () => {
  it('goes by steps between rounded places, straight ones by one number', () => {
    expect(shortPath('M76.5 -180L139.5 -180L139.5 -165L76.5 -165Z', 1)).toBe('m76.5-180h63v15h-63z');
    expect(shortPath('M0.04 0L10.06 5.26L20 5.26', 1)).toBe('m0 0 10.1 5.3h9.9');
    expect(shortPath('M1 1L1.5 1.5L2 2', 1)).toBe('m1 1 .5.5.5.5');
    expect(shortPath('M0 0A5 5 0 0 1 5 5', 1)).toBe('m0 0a5 5 0 0 1 5 5');
    expect(shortPath('M1 1L2 2ZM5 5Q6 6 7 5C8 4 9 4 10 5', 1)).toBe('m1 1 1 1zm4 4q1 1 2 0c1-1 2-1 3 0');
  });
});
