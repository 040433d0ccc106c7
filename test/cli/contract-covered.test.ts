import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Book } from '../../src/core/book/index.js';
import { HouseUnderGit } from './house-under-git.js';

const record = 'content/house.md';

const issued = HouseUnderGit.after((house) => house.run('issue --for sign-off'));

let house: HouseUnderGit;
beforeEach(async () => {
  house = await issued();
});
afterEach(() => house.remove());

const agreed = async (): Promise<Book['money']['agreed']> =>
  (JSON.parse((await house.run('build --json')).out) as Book).money.agreed;

test('a contract sum that nobody agreed to is an error of check and of issue, and is told by compare', async () => {
  const before = await agreed();
  house.edit(record, 'sum: $100,000', 'sum: $110,000');
  house.commit('The sum is raised quietly');
  const said = await house.run('check');
  expect(said.code).toBe(1);
  expect(said.error).toMatch(
    /content\/house\.md:\d+:8 +contract-not-covered  error: Contract sum: agreed is \$100,000, as issue 1 .* and the record says \$110,000/,
  );
  expect(await house.run('issue --for pricing')).toMatchObject({ code: 1, out: '' });
  const compared = (await house.run('compare issue-1')).out;
  expect(compared).toMatch(/Contract sum +\+\$10,000\.00/);
  expect(compared).toMatch(/Contract sum +\$100,000 +\$110,000/);
  // What was agreed stays what it was; all of the rest is not covered.
  const after = await agreed();
  expect(after.current).toBe(before.current);
  expect(after.notCovered - before.notCovered).toBe(1_000_000);
});

test('an approved change order covers it, once: the sum does not count twice', async () => {
  const before = await agreed();
  house.edit(record, 'sum: $100,000', 'sum: $110,000');
  house.commit('The sum is raised');
  await house.run('compare issue-1 HEAD --draft --reason "A steel beam."');
  expect(house.read('content/changes/001.md')).toContain('term: contract.sum');
  const proposed = await house.run('check');
  expect(proposed).toMatchObject({ code: 0 });
  expect(proposed.error).toMatch(/contract-not-covered +warning: Contract sum/);
  expect(proposed.error).toContain('bookmatch approve 1');
  expect(await house.run('approve 1 --by owner')).toMatchObject({ code: 0, error: '' });
  expect(await house.run('check')).toMatchObject({ code: 0, error: '' });
  const after = await agreed();
  expect(after.current - before.current).toBe(1_000_000);
  expect(after.notCovered).toBe(before.notCovered);
  // And what was agreed cannot be written back quietly either.
  house.edit(record, 'sum: $110,000', 'sum: $100,000');
  expect((await house.run('check')).error).toContain('Contract sum: agreed is $110,000');
});

test.each([
  ['overage-markup: 15 %', 'overage-markup: 18 %', 'Contract: overage markup'],
  ['credit-returns: 100 %', 'credit-returns: 80 %', 'Contract: credit returns'],
  ['tax: { rate: 5 %', 'tax: { rate: 6 %', 'Contract: tax, rate'],
  ['on: [material] }', 'on: [material, labor] }', 'Contract: tax, on'],
  ['amount: "$1,000"', 'amount: "$900"', 'Allowance Wood ceilings: amount'],
])('%s → %s moves no money today, or does, and is a change like any other', async (from, to, what) => {
  house.edit(record, from, to);
  house.commit('Terms');
  const said = await house.run('check');
  expect(said.code).toBe(1);
  expect(said.error).toContain(`contract-not-covered  error: ${what}: agreed is`);
  await house.run('compare issue-1 HEAD --draft --reason "Agreed on the phone."');
  await house.run('approve 1 --by "The owner"');
  expect(await house.run('check')).toMatchObject({ code: 0, error: '' });
});

test('the term that a frozen line agrees to cannot be edited in the change order', async () => {
  house.edit(record, 'overage-markup: 15 %', 'overage-markup: 18 %');
  house.commit('Terms');
  await house.run('compare issue-1 HEAD --draft --reason "Agreed."');
  await house.run('approve 1 --by owner');
  house.edit('content/changes/001.md', 'to: 18 %', 'to: 25 %');
  house.edit(record, 'overage-markup: 18 %', 'overage-markup: 25 %');
  expect((await house.run('check')).error).toContain('change-disagrees');
});

test('the same sum written otherwise is no change', async () => {
  house.edit(record, 'sum: $100,000', 'sum: $100,000.00');
  expect(await house.run('check')).toMatchObject({ code: 0, error: '' });
});

test('an issue from before the day of the contract was an offer', async () => {
  const other = new HouseUnderGit();
  await other.run('issue --for pricing', '2026-01-10');
  other.edit(record, 'sum: $100,000', 'sum: $98,000');
  expect(await other.run('check')).toMatchObject({ code: 0, error: '' });
  other.remove();
});
