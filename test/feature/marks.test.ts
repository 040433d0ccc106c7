import { describe, expect, test } from 'vitest';
import type { FeatureMeasure, RoomMeasure } from '../../src/core/model/index.js';
import { faceMarks, planMarks } from '../../src/core/feature/index.js';
import { measured } from '../measure/measured.js';
import { flat, len, size } from '../measure/room-record.js';

function only(measure: RoomMeasure): FeatureMeasure {
  const [first] = measure.features;
  if (!first) throw new Error('no feature');
  return first;
}

const hall = { shape: size(`24'`, `18'`), ceiling: flat(`16'`) };

describe('what a kind shows of itself', () => {
  const at = { id: 'one', name: 'One' };
  const stairs = { rise: `9'`, risers: 4, going: `1'`, width: `4'`, x: `0'`, y: `0'`, go: 'north' };

  test('a stair is a flight of treads of a foot from its foot on', () => {
    const stair = only(measured({ ...hall, features: [{ kind: 'stair', ...at, ...stairs }] }));
    const [mark, ...more] = planMarks(stair);
    expect(more).toEqual([]);
    expect(mark).toMatchObject({ role: 'flight', treads: 3, risers: 4 });
    const outline = [
      { x: 0, y: 0 },
      { x: len(`4'`), y: 0 },
      { x: len(`4'`), y: len(`3'`) },
      { x: 0, y: len(`3'`) },
    ];
    expect(mark && 'outline' in mark && mark.outline).toEqual(outline);
    expect(faceMarks(stair, 'north')).toEqual([]);
  });

  test('a breast is cut, its firebox hollow, its hearth on the floor; on other walls it is not seen', () => {
    const raw = {
      ...{ kind: 'chimney-breast', ...at, wall: 'north', at: `8'`, width: `7'`, depth: `2'` },
      firebox: { width: `3'`, height: `3'`, sill: `1'` },
      hearth: { width: `5'`, depth: `2'`, thickness: `2"`, height: `1'` },
    };
    const breast = only(measured({ ...hall, features: [raw] }));
    expect(planMarks(breast).map(({ role }) => role)).toEqual(['slab', 'mass', 'hollow']);
    expect(planMarks(breast)[0]).toEqual({
      role: 'slab',
      wall: 'north',
      outline: [
        { along: len(`9'`), out: len(`2'`) },
        { along: len(`14'`), out: len(`2'`) },
        { along: len(`14'`), out: len(`4'`) },
        { along: len(`9'`), out: len(`4'`) },
      ],
    });
    expect(faceMarks(breast, 'north').map(({ role }) => role)).toEqual(['mass', 'opening', 'plinth', 'slab']);
    expect(faceMarks(breast, 'south')).toEqual([]);
  });

  test('a kind that says nothing is its footprint, and on the wall what it covers', () => {
    const raw = { kind: 'built-in', ...at, wall: 'west', at: `4'`, width: `6'`, depth: `2'`, height: `2'` };
    const bench = only(measured({ ...hall, features: [raw] }));
    expect(planMarks(bench)).toEqual([{ role: 'body', outline: bench.footprint }]);
    expect(faceMarks(bench, 'west')).toEqual([
      {
        role: 'body',
        outlines: [
          [
            { x: len(`4'`), y: 0 },
            { x: len(`10'`), y: 0 },
            { x: len(`10'`), y: len(`2'`) },
            { x: len(`4'`), y: len(`2'`) },
          ],
        ],
      },
    ]);
    expect(planMarks({ ...bench, kind: 'of tomorrow' })).toEqual(planMarks(bench));
  });
});
