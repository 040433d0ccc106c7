import { expect, test } from 'vitest';
import { drawnRoom, lookUp } from '../../src/core/book/index.js';
import { chooseView } from '../../src/draw/cutaway/choose-view.js';
import { looksOf } from '../../src/draw/cutaway/look.js';
import { sidesOf } from '../../src/draw/cutaway/outline.js';
import { Painter } from '../../src/draw/cutaway/paint.js';
import { sceneOf } from '../../src/draw/cutaway/scene.js';
import { isInside } from '../../src/draw/inside.js';
import { demoBook } from '../demo-house.js';

test('boards end along a wall that runs askew to them', async () => {
  const look = lookUp(await demoBook('2026-04-20'));
  const { measure, seen } = drawnRoom(look.room('dining')!, look);
  const { laid, camera } = sceneOf(measure, chooseView(measure, sidesOf(measure)), '', () => []);
  const floor = laid.find(({ facet }) => facet.id === 'floor')!;
  const scale = 20;
  const [ring] = floor.rings.map((one) => one.map(([x, y]) => [x * scale, y * scale] as const));
  const nodes = new Painter(camera, scale, looksOf(seen), 'c').facet(floor, []);
  const tones = nodes.slice(1, -1).filter(({ attributes }) => attributes['fill'] !== 'none');
  expect(tones.length).toBeGreaterThan(2);
  const corners = tones.flatMap(({ attributes }) => cornersOf(String(attributes['d'])));
  // To the tenth of a point that outlines are written in.
  expect(corners.filter((spot) => !isInside(spot, ring!) && edgeDistance(spot, ring!) > 0.1)).toEqual([]);
});

/** Of a path of absolute and relative straight lines. */
function cornersOf(data: string): readonly (readonly [number, number])[] {
  let [x, y] = [0, 0];
  return [...data.matchAll(/([MLHVmlhv])([^MLHVZmlhvz]*)/g)].flatMap(([, command = '', rest = '']) => {
    const numbers = [...rest.matchAll(/-?\d*\.?\d+/g)].map(Number);
    const isRelative = command === command.toLowerCase();
    const spots: [number, number][] = [];
    const to = (nextX: number, nextY: number) => {
      [x, y] = [nextX, nextY];
      spots.push([x, y]);
    };
    const [baseX, baseY] = [() => (isRelative ? x : 0), () => (isRelative ? y : 0)];
    if (/h/i.test(command)) numbers.forEach((by) => to(baseX() + by, y));
    else if (/v/i.test(command)) numbers.forEach((by) => to(x, baseY() + by));
    else for (let i = 0; i + 1 < numbers.length; i += 2) to(baseX() + numbers[i]!, baseY() + numbers[i + 1]!);
    return spots;
  });
}

function edgeDistance([x, y]: readonly [number, number], ring: readonly (readonly [number, number])[]): number {
  return Math.min(
    ...ring.map(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length]!;
      const share = ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / ((bx - ax) ** 2 + (by - ay) ** 2);
      const near = Math.max(0, Math.min(1, share));
      return Math.hypot(x - ax - near * (bx - ax), y - ay - near * (by - ay));
    }),
  );
}
