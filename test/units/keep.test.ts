import { describe, expect, test } from 'vitest';
import {
  inLocale,
  keepAlike,
  keepSame,
  locale,
  usualLocale,
  withLater,
  withParts,
} from '../../src/base/units/index.js';

describe('what is kept by the same inputs', () => {
  test('is made once for each: objects by which they are, lists by their entries, figures by what they say', () => {
    let made = 0;
    const kept = keepSame((_of: object, _list: readonly object[], _figure: number) => (made += 1));
    const [a, b] = [{}, {}];
    expect(kept(a, [b], 1)).toBe(1);
    expect(kept(a, [b], 1), 'again').toBe(1);
    expect(kept(a, [{}], 1), 'an entry that only looks alike').toBe(2);
    expect(kept(a, [b, b], 1), 'one more entry').toBe(3);
    expect(kept(a, [b], 2), 'another figure').toBe(4);
    expect(kept(b, [b], 1), 'another object').toBe(5);
  });

  test('is forgotten when others came after', () => {
    let made = 0;
    const kept = keepSame((_of: object, figure: number) => ((made += 1), figure));
    const of = {};
    for (const figure of [1, 2, 3, 4]) kept(of, figure);
    kept(of, 1);
    expect(made).toBe(4);
    kept(of, 5);
    kept(of, 1);
    expect(made).toBe(6);
  });
});

describe('what is alike', () => {
  const kept = keepAlike<unknown>();
  test.each([
    ['lists and objects', { a: [1, { b: 'x' }] }, { a: [1, { b: 'x' }] }],
    ['maps', new Map([['a', [1]]]), new Map([['a', [1]]])],
    ['not a number', [NaN], [NaN]],
  ])('is the same object: %s', (name, one, other) => {
    expect(kept(name, one)).toBe(one);
    expect(kept(name, other)).toBe(one);
  });

  const work = (): number => 1;
  test.each([
    ['another value', { a: 1 }, { a: 2 }],
    ['one more key', { a: 1 }, { a: 1, b: undefined }],
    ['another key', { a: undefined }, { b: undefined }],
    ['an order of lists', [1, 2], [2, 1]],
    ['an order of maps', new Map([[1, 1], [2, 2]]), new Map([[2, 2], [1, 1]])], // prettier-ignore
    ['a list and an object', [], {}],
    ['what works', { work }, { work: (): number => 1 }],
    ['nothing', null, {}],
  ])('and what is not is another: %s', (name, one, other) => {
    expect(kept(`not ${name}`, one)).toBe(one);
    expect(kept(`not ${name}`, other)).toBe(other);
  });

  test('is told apart by name', () => {
    const other = { a: 1 };
    expect(kept('one name', { a: 1 })).not.toBe(kept('another', other));
  });
});

describe('what is worked out later', () => {
  const metric = { ...usualLocale, units: 'metric' } as const;

  test('is worked out once, in the locale in which it was put off, and reads as any other part', () => {
    let times = 0;
    const told = inLocale(metric, () => withLater({ a: 1 }, { b: () => [(times += 1), locale().units] }));
    expect(times).toBe(0);
    expect(JSON.stringify(told)).toBe('{"a":1,"b":[1,"metric"]}');
    expect({ ...told }).toEqual({ a: 1, b: [1, 'metric'] });
    expect(times).toBe(1);
  });

  test('stays so in a copy with other parts', () => {
    let times = 0;
    const told = withLater({ a: 1 }, { b: () => (times += 1) });
    const other = withParts(told, { a: 2 });
    expect([other.a, times]).toEqual([2, 0]);
    expect([other.b, told.b, times, told.a]).toEqual([1, 1, 1, 1]);
    expect(withParts(told, { b: 7 }).b).toBe(7);
  });
});
