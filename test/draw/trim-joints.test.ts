import { describe, expect, it } from 'vitest';
import { jointsIn, trimJoints, type TrimJoints } from '../../src/core/fact/index.js';
import { printPalette, sampleFacts, trimJointsDrawer } from '../../src/draw/index.js';
import { option } from '../caution/house.js';
import { demoBook } from '../demo-house.js';
import { nodesOf, pathCorners } from './reading.js';

const facts = (joints: TrimJoints) => ({ thing: { face: 4, through: 1, joints } });

/** Corners of each piece of trim in inches of the house, from the first of them, y up. */
function pieces(joints: TrimJoints): readonly (readonly (readonly [number, number])[])[] {
  const drawn = trimJointsDrawer(facts(joints), 'Base')?.({ id: 'x', palette: printPalette, bare: true });
  if (!drawn) return [];
  const inch = 72 / drawn.ratio;
  const found = nodesOf(drawn.svg)
    .filter(({ name, attributes }) => name === 'path' && attributes['fill'] === printPalette.tone)
    .map(({ attributes }) => pathCorners(String(attributes['d'])));
  const [x, y] = found[0]?.[0] ?? [0, 0];
  const whole = (value: number) => Math.round(value * 100) / 100 + 0;
  return found.map((corners) =>
    corners.map((one) => [whole((one[0] - x) / inch), whole((y - one[1]) / inch)] as const),
  );
}

describe('joints of trim', () => {
  it('are those that the record tells, by the words it has for them', () => {
    expect(trimJoints(option({ joint: 'butt, head over legs' }))).toEqual({ head: 'head over legs' });
    expect(trimJoints(option({ joint: 'Mitred' }))).toEqual({ head: 'mitered' });
    expect(trimJoints(option({ 'inside-corner': 'coped', 'outside-corner': 'mitered' }))).toEqual({
      inside: 'coped',
      outside: 'mitered',
    });
    expect(trimJoints(option({ joint: 'dry-stacked', 'inside-corner': 'by the carpenter' }))).toEqual({});
    expect(jointsIn('Nails in line, glued miters; scribe to the stone. Copper nails.')).toEqual(['mitered', 'scribed']);
  });

  it('a coped piece ends on the face of the other, cut off behind it', () => {
    const [long, short] = pieces({ inside: 'coped' });
    expect(long).toEqual([
      [0, 0],
      [4, 0],
      [4, -1],
      [0, -1],
    ]);
    expect(short?.slice(0, 2)).toEqual([
      [0, -1.45],
      [1, -1],
    ]);
  });

  it('mitered pieces share the line from the walls’ corner to their own', () => {
    const shared = ([one = [], other = []]: ReturnType<typeof pieces>) =>
      one.filter(([x, y]) => other.some(([a, b]) => a === x && b === y));
    expect(shared(pieces({ inside: 'mitered' }))).toEqual([
      [0, 0],
      [1, -1],
    ]);
    const [first, last] = shared(pieces({ outside: 'mitered' }));
    expect([last![0] - first![0], last![1] - first![1]]).toEqual([1, 1]);
  });

  it('scribed, the short end follows the face that it meets', () => {
    const [, short = []] = pieces({ inside: 'scribed' });
    const end = short.slice(0, 9).map(([, y]) => y);
    expect(new Set(end).size).toBeGreaterThan(2);
    expect(Math.max(...end)).toBe(-1);
  });

  it('are not drawn where nothing is recorded, or not how large the trim is', () => {
    expect(trimJointsDrawer(facts({}), 'Base')).toBeUndefined();
    expect(trimJointsDrawer({ thing: { joints: { inside: 'coped', head: 'mitered' } } }, 'Base')).toBeUndefined();
  });

  it('of the demo are all at one scale, and are said', async () => {
    const { options } = await demoBook('2026-04-20');
    const drawn = options.flatMap(
      (one) => trimJointsDrawer(sampleFacts(one), one.name)?.({ id: 'x', palette: printPalette, ratio: 8 }) ?? [],
    );
    expect(drawn.length).toBeGreaterThan(6);
    expect(new Set(drawn.map(({ ratio }) => ratio))).toEqual(new Set([8]));
    expect(drawn.map(({ description }) => description)).toContain(
      'Flat poplar base, 5 1/2 inch, joints to scale: inside, coped; outside, mitered.',
    );
  });
});
