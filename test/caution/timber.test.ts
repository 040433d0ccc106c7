import { describe, expect, test } from 'vitest';
import { feature, len, room, seenBy } from './house.js';

/** What is seen of a timber with such ends and such joinery. */
function seen(joinery: string | undefined, ends: readonly [string, string] = ['1 1/2"', '0"']): string[] {
  const data = {
    count: 1,
    length: len(`8'`),
    width: len('6"'),
    depth: len('6"'),
    ends: ends.map(len),
    isMetric: false,
    sides: 4,
    ...(joinery !== undefined && { joinery }),
  };
  const features = [feature('timber', 'post', data)];
  return seenBy('joint-as-written', room({ measure: { features } })).map((caution) => caution.seen);
}

describe('a joint that is written', () => {
  test.each([
    ['Stub tenon of 1 1/2 inches in the sill', []],
    ['Stub tenon of 1 17/32 inches', []],
    ['Stub tenon of 1 9/16 inches', ['a tenon of 1 9/16"']],
    ['Tenon 1/2" long, pegged', ['a tenon of 1/2"']],
    ['Tenons of 38 mm', []],
    ['Tenons of 60 mm', ['a tenon of 2']],
    ['Bears 3 inches on the post', ['a bearing of 3"']],
    ['Bearing of 1-1/2 inches', []],
    ['Tenon of 2 inches; bears by 4"', ['a tenon of 2" and a bearing of 4"']],
  ])('%s, where 1 1/2" and nothing are added', (joinery, expected) => {
    const found = seen(joinery);
    expect(found).toHaveLength(expected.length);
    expected.forEach((words, at) => expect(found[at]).toContain(words));
  });

  test.each([
    'Heel tenon into the chord, plumb cut over the king post',
    'Rafter seats let in 3 inches, bolted',
    'Tenon as drawn, 2 bolts',
    'Bearing plate of 8 inches by the smith',
  ])('%s: no length of a tenon or bearing is told', (joinery) => expect(seen(joinery)).toEqual([]));

  test('is not asked for where nothing is written', () => expect(seen(undefined)).toEqual([]));

  test('is held against either end', () => {
    expect(seen('Tenon of 2 inches', ['0"', '2"'])).toEqual([]);
    expect(seen('Tenon of 2 inches', ['0"', '0"'])[0]).toContain(`0" and 0" are added at its ends`);
  });
});
