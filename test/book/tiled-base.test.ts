import { expect, test } from 'vitest';
import { demoBook } from '../demo-house.js';

test('in the demo no base is bought for a wall that is tiled: its record leaves these out', async () => {
  const { rooms, selections } = await demoBook('2026-04-20');
  const placesOf = (room: string, category: string): readonly string[] =>
    selections
      .filter((one) => one.room === room && one.category === category)
      .flatMap(({ takeoff }) => takeoff.flatMap(({ places }) => places.map(({ place }) => place)));
  const tiled = rooms.flatMap(({ slug, measure }) => {
    const tile = placesOf(slug, 'tile');
    const walls = measure.walls.map(({ id }) => id).filter((id) => tile.includes(id));
    return walls.map((wall) => [`${slug}/${wall}`, placesOf(slug, 'base-trim').includes(wall)]);
  });
  expect(tiled).toEqual([
    ['primary-bath/shower-north', false],
    ['primary-bath/shower-east', false],
    ['hall-bath/tub-north', false],
    ['hall-bath/tub-east', false],
    ['hall-bath/tub-south', false],
  ]);
});
