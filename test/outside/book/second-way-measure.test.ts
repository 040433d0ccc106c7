import { describe, expect, test } from 'vitest';
import { demoHouse } from '../../demo-house.js';
import { breastCorners } from './second-way/feature.js';
import { figuresOf } from './second-way/measure.js';
import { sum } from './second-way/paper.js';
import { drawnRooms } from './second-way/room.js';

/** The measures of the demo house by a second way: plans by the shoelace formula, ceilings cell by cell as the least of what their forms
 *  say, walls and faces in upright strips. No publication is behind it: the same records are worked by other formulas. Left out: the
 *  headroom of the stair, shapes and outlines, and whatever no room of the demo has (arcs, leaning walls, hips, voids, floor parts,
 *  skylights, soffits). Tolerance: every strip is exact, what remains is what floats add up to. */

const { measures } = await demoHouse();
const rooms = drawnRooms();
/** Square feet, feet and cubic feet. */
const near = 4;
const feet = (nanometres: number): number => nanometres / 304_800_000;

test('the same rooms are measured', () => {
  expect([...measures.keys()].sort()).toEqual([...rooms.keys()].sort());
});

describe.each([...rooms.values()].map((room) => [room.slug, room] as const))('%s by a second way', (slug, room) => {
  const other = figuresOf(room);
  const measure = measures.get(slug);
  if (!measure) throw new Error(`${slug} is not measured`);

  test('plan, floor and perimeter', () => {
    expect(measure.floor.gross, `${slug}: plan`).toBeCloseTo(other.plan, near);
    expect(measure.floor.net, `${slug}: floor less what stands on it`).toBeCloseTo(other.floor, near);
    expect(feet(measure.perimeter), `${slug}: perimeter`).toBeCloseTo(other.perimeter, near);
    expect(feet(measure.wallRun), `${slug}: run of the walls`).toBeCloseTo(other.wallRun, near);
  });

  test('ceiling, volume and heights', () => {
    const { ceiling } = measure;
    expect(ceiling.gross, `${slug}: ceiling before deductions`).toBeCloseTo(other.ceiling.gross, near);
    expect(ceiling.net, `${slug}: ceiling`).toBeCloseTo(other.ceiling.net, near);
    expect(ceiling.planArea, `${slug}: ceiling in plan`).toBeCloseTo(other.ceiling.plan, near);
    expect(sum(ceiling.facets.map(({ area }) => area)), `${slug}: facets`).toBeCloseTo(other.ceiling.net, near);
    expect(sum((measure.steps ?? []).map(({ net }) => net)), `${slug}: steps`).toBeCloseTo(other.steps, near);
    expect(measure.volume, `${slug}: volume`).toBeCloseTo(other.volume, near - 1);
    expect(feet(measure.lowest), `${slug}: lowest`).toBeCloseTo(other.lowest, near);
    expect(feet(measure.highest), `${slug}: highest`).toBeCloseTo(other.highest, near);
    expect(measure.headroom.fiveFeet, `${slug}: floor under five feet`).toBeCloseTo(other.fiveFeet, near);
    expect(measure.headroom.sevenFeet, `${slug}: floor under seven feet`).toBeCloseTo(other.sevenFeet, near);
  });

  test('walls, what is taken off them, and openings', () => {
    expect(measure.walls.map(({ id }) => id)).toEqual(room.sides.map(({ name }) => name));
    for (const wall of measure.walls) {
      const face = other.walls.get(wall.id);
      expect(wall.gross, `${slug}, ${wall.id}: gross`).toBeCloseTo(face?.gross ?? NaN, near);
      expect(wall.net, `${slug}, ${wall.id}: net`).toBeCloseTo(face?.net ?? NaN, near);
      for (const cut of face?.cuts ?? []) {
        const taken = wall.deductions.find(({ of }) => of === cut.of);
        expect(taken?.area ?? 0, `${slug}, ${wall.id}: ${cut.of}`).toBeCloseTo(cut.area, near);
      }
    }
    for (const opening of room.openings) {
      const { area, areaOnWall } = measure.openings.find(({ mark }) => mark === opening.mark) ?? {};
      const cut = other.walls.get(opening.wall)?.cuts.find(({ of }) => of === opening.mark);
      expect(area, `${slug}: ${opening.mark}`).toBeCloseTo(opening.width * opening.height, near);
      expect(areaOnWall, `${slug}: ${opening.mark} on its wall`).toBeCloseTo(cut?.area ?? NaN, near);
    }
  });

  test('features', () => {
    const faces = measure.features.flatMap((feature) => feature.faces);
    expect(faces.map(({ id }) => id).sort()).toEqual([...other.faces.keys()].sort());
    for (const face of faces) {
      expect(face.gross, `${slug}, ${face.id}: gross`).toBeCloseTo(other.faces.get(face.id)?.gross ?? NaN, near);
      expect(face.net, `${slug}, ${face.id}: net`).toBeCloseTo(other.faces.get(face.id)?.net ?? NaN, near);
    }
    const runs = measure.features.flatMap((feature) => feature.runs);
    for (const [id, length] of other.runs)
      expect(feet(runs.find((run) => run.id === id)?.length ?? 0), `${slug}, ${id}`).toBeCloseTo(length, near);
    for (const breast of room.features.filter(({ kind }) => kind === 'chimney-breast'))
      expect(feet(runs.find(({ id }) => id === `${breast['id'] as string}/corners`)?.length ?? 0)).toBeCloseTo(
        breastCorners(room, breast),
        near,
      );
  });
});
