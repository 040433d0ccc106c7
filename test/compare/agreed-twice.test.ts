import { describe, expect, test } from 'vitest';
import { agreedTwice, inOrderOfDecision } from '../../src/core/compare/index.js';
import type { ChangeLine, ChangeOrder, Issue } from '../../src/core/model/index.js';

const line = (from: string | undefined, to: string, more: Partial<ChangeLine> = {}): ChangeLine =>
  ({
    room: 'study',
    selection: 'study/floor/floor',
    what: 'Floor',
    ...(from !== undefined && { from }),
    to,
    amount: 1,
    ...more,
  }) as ChangeLine;
const order = (number: number, lines: readonly ChangeLine[], more: Partial<ChangeOrder> = {}): ChangeOrder =>
  ({ number, state: 'approved', from: 'issue-1', decidedOn: '2026-04-02', lines, ...more }) as ChangeOrder;
const issues = [{ number: 1, commit: 'aa' }] as unknown as readonly Issue[];
const twice = (one: ChangeOrder, ...approved: readonly ChangeOrder[]): readonly number[] =>
  agreedTwice(one, approved, issues).map(({ by }) => by.number);

describe('a line that an approved change order has already', () => {
  test('the same step, and another step from the same state', () => {
    expect(twice(order(2, [line('Oak', 'Pine')]), order(1, [line('Oak', 'Pine')]))).toEqual([1]);
    expect(twice(order(2, [line('Oak', 'Maple')]), order(1, [line('Oak', 'Pine')]))).toEqual([1]);
  });

  test('not a step that goes on, nor one after the first was taken back', () => {
    expect(twice(order(2, [line('Pine', 'Maple')]), order(1, [line('Oak', 'Pine')]))).toEqual([]);
    const [there, back] = [order(1, [line('Oak', 'Pine')]), order(2, [line('Pine', 'Oak')])];
    expect(twice(order(3, [line('Oak', 'Pine')]), there, back)).toEqual([]);
    expect(twice(order(3, [line('Pine', 'Oak')]), there, back)).toEqual([2]);
  });

  test('not another place, another room, another term', () => {
    const first = order(1, [line('Oak', 'Pine')]);
    expect(twice(order(2, [line('Oak', 'Pine', { selection: 'study/floor/landing' })]), first)).toEqual([]);
    expect(twice(order(2, [line('Oak', 'Pine', { room: 'den' })]), first)).toEqual([]);
  });

  test('a line without sides goes by the version that its order begins at, an issue being its commit', () => {
    const shared = line(undefined, '', { what: 'Price book' });
    expect(twice(order(2, [shared], { from: 'aa' }), order(1, [shared]))).toEqual([1]);
    expect(twice(order(2, [shared], { from: 'bb' }), order(1, [shared]))).toEqual([]);
  });

  test('approved ones stand in the order of decisions', () => {
    const some = [order(1, [], { decidedOn: '2026-04-09' }), order(2, [], { state: 'declined' }), order(3, [])];
    expect(inOrderOfDecision(some).map(({ number }) => number)).toEqual([3, 1]);
  });
});
