import { spaceDot, type Xyz } from '../../src/base/geometry/index.js';
import type { Laid } from '../../src/draw/cutaway/order.js';
import type { Scene } from '../../src/draw/cutaway/scene.js';
import { isInside } from '../../src/draw/inside.js';
import { seeded } from '../../src/draw/swatch/random.js';

export function covers({ rings }: Laid, spot: readonly [number, number]): boolean {
  return rings.filter((ring) => isInside(spot, ring)).length % 2 === 1;
}

/** How far toward the viewer a facet's plane is at a place of the sheet. */
function depthAt({ facet: { plane } }: Laid, [x, y]: readonly [number, number], { camera }: Scene): number {
  const { right, up, toward } = camera;
  const start: Xyz = { x: right.x * x - up.x * y, y: right.y * x - up.y * y, z: right.z * x - up.z * y };
  return (spaceDot(plane.at, plane.faces) - spaceDot(start, plane.faces)) / spaceDot(toward, plane.faces);
}

/** Places of the sheet where what is drawn last is not what is nearest, of so many looked at. */
export function wrongPlaces(scene: Scene, count: number): readonly string[] {
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
