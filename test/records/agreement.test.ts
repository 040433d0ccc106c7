import { describe, expect, test } from 'vitest';
import { readRecords } from '../../src/core/records/index.js';
import { told, withFiles } from './small-house.js';

const hex = 'ab'.repeat(32);
const issue = `---
purpose: sign-off
date: 2026-04-20
commit: ${'c'.repeat(40)}
digest: ${hex}
rooms: { study: ${hex} }
trades: {}
---
Issued.
`;
const order = `---
title: Oak in the study
state: approved
from: issue-1
to: ${'d'.repeat(40)}
proposed-on: 2026-04-21
decided-on: 2026-04-23
decided-by: The owners
reason: The sample looked better.
days: 0 days
amount: $90.50
lines:
  - { room: study, what: "Floor: pine to oak", amount: $120 }
  - { what: Shared packs, amount: -$29.50 }
---
`;

function toldOf(files: Readonly<Record<string, string>>): readonly string[] {
  return told(readRecords(withFiles(files)));
}

function edited(from: string | RegExp, to: string): readonly string[] {
  const text = order.replace(from, to);
  if (text === order) throw new Error('nothing was edited');
  return toldOf({ 'content/issues/001.md': issue, 'content/changes/001.md': text });
}

describe('issues and change orders', () => {
  test('are read with exact money, in order of number', () => {
    const files = withFiles({ 'content/issues/001.md': issue, 'content/changes/001.md': order });
    const { value, problems } = readRecords(files);
    expect(problems).toEqual([]);
    expect(value?.issues.map(({ number, purpose, digest }) => [number, purpose, digest])).toEqual([
      [1, 'sign-off', hex],
    ]);
    expect(value?.changes[0]).toMatchObject({ number: 1, amount: 9050, days: 0, decidedBy: 'The owners' });
    expect(value?.changes[0]?.lines.map(({ amount }) => amount)).toEqual([12000, -2950]);
  });

  test.each([
    [
      'lines that do not add up',
      edited('$90.50', '$90.00'),
      [
        'changes/001.md:11:9 change-sum the lines add up to +$90.50, which is $0.50 off the amount | lines are frozen when a change order is drafted: draft it anew, or restore what was written',
      ],
    ],
    [
      'an approval without a day',
      edited('decided-on: 2026-04-23\n', ''),
      [
        "changes/001.md:3:8 change-decision-missing 'approved' does not say who decided and when | write decided-on: with a day, and decided-by: with a role",
      ],
    ],
    [
      'a proposal that was decided',
      edited('state: approved', 'state: proposed'),
      [
        'changes/001.md:7:13 change-undecided a proposed change order is not decided | write the state it was decided to, or leave out decided-on and decided-by',
      ],
    ],
    [
      'a decision before the proposal',
      edited('2026-04-23', '2026-04-20'),
      ['changes/001.md:7:13 date-order 2026-04-20 is before 2026-04-21, when it was proposed | it is proposed first'],
    ],
    [
      'an issue that is not there',
      edited('issue-1', 'issue-3'),
      ['changes/001.md:4:7 issue-unknown there is no issue-3 | the last issue is issue-1'],
    ],
    [
      'part of a commit id',
      edited('d'.repeat(40), 'dddd'),
      ["changes/001.md:5:5 text-form 'dddd' is not a version | write issue-2, or the whole id of a commit"],
    ],
    [
      'an unknown state',
      edited('state: approved', 'state: aproved'),
      ["changes/001.md:3:8 value-unknown 'state' cannot be 'aproved' | did you mean 'approved'?"],
    ],
  ])('%s', (_, said, expected) => {
    expect(said).toEqual(expected);
  });

  test('a number that was taken away is missed', () => {
    expect(
      toldOf({
        'content/changes/001.md': order.replace('issue-1', 'e'.repeat(40)),
        'content/changes/003.md': order.replace('issue-1', 'e'.repeat(40)),
      }),
    ).toEqual([
      'changes/003.md:1:1 (warning) number-gap change order 2 is missing | a void one keeps its record with state: void',
    ]);
    expect(toldOf({ 'content/issues/004.md': issue })).toEqual([
      'issues/004.md:1:1 (warning) number-gap issues 1 to 3 are missing | bring its record back from git; an issue is never taken away',
    ]);
  });

  test('they are named by three digits', () => {
    expect(toldOf({ 'content/changes/two.md': order })).toEqual([
      "changes/two.md:1:1 number-form 'two' is not a number | name it by its number, such as content/changes/003.md",
    ]);
  });
});
