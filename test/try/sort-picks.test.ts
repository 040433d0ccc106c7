import { describe, expect, test } from 'vitest';
import { lockOf, sortPicks, triedOptions, type KeptPick } from '../../src/try/index.js';
import { fixtureBook } from '../site/fixture.js';

const floor = 'great-room/wood-floor/floor';
const ceiling = 'great-room/ceiling-board/ceiling';
const study = 'study/wood-floor/floor';

const pick = (selection: string, was: string | null, now: string | null): KeptPick => ({ selection, was, now });

const sort = (picks: readonly KeptPick[], locks: Readonly<Record<string, string>> = {}) => {
  const { fit, unfit } = sortPicks(picks, fixtureBook, locks);
  return { fit: fit.map(({ selection }) => selection), unfit: unfit.map(({ why }) => why) };
};

describe('picks of older records', () => {
  test('fit where the place stands as it stood and the option is there', () => {
    expect(sort([pick(floor, null, 'white-oak-5'), pick(ceiling, 'alder-nickel-gap-1x8', 'pine-shiplap-1x8')])).toEqual(
      {
        fit: [floor, ceiling],
        unfit: [],
      },
    );
  });

  test.each([
    ['attic/floor/floor', null, 'oak', 'the place is no longer there'],
    [floor, null, 'maple', 'it is no longer considered there'],
    [floor, 'fir-plank', 'white-oak-5', 'something else was chosen there meanwhile'],
  ])('say of %s, %s → %s why not', (selection, was, now, why) => {
    expect(sort([pick(selection, was, now)])).toEqual({ fit: [], unfit: [why] });
  });

  test('are settled where that was chosen meanwhile', () => {
    expect(sort([pick(ceiling, null, 'alder-nickel-gap-1x8')])).toEqual({ fit: [], unfit: [] });
  });

  test('do not fit where the option was withdrawn before the day of the Book', () => {
    const gone = (on: string) => ({
      ...fixtureBook,
      options: fixtureBook.options.map((option) => ({ ...option, withdrawn: { on, why: 'The mill closed' } })),
    });
    const one = pick(floor, null, 'white-oak-5');
    expect(sortPicks([one], gone(fixtureBook.on), {}).fit).toEqual([one]);
    expect(sortPicks([one], gone('2026-01-01'), {}).unfit).toEqual([{ pick: one, why: 'it was withdrawn' }]);
  });

  test('do not fit what is locked meanwhile', () => {
    const one = pick(study, 'fir-plank', 'white-oak-5');
    expect(sort([one], { [study]: 'It is ordered.' }).unfit).toEqual(['it can no longer be changed here']);
  });
});

const at = (id: string) => {
  const found = fixtureBook.selections.find((selection) => selection.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};

test.each([
  [floor, undefined],
  [ceiling, undefined],
  [study, 'It is ordered: changing it takes a change order.'],
])('%s is locked: %s', (id, why) => {
  expect(lockOf(at(id))).toBe(why);
});

test('what was decided and signed is locked, what was open when it was signed is not', () => {
  const signed = { issue: 2, state: 'signed', what: [] } as const;
  expect(lockOf({ ...at(ceiling), signed })).toBe('It is signed in issue 2: changing it takes a change order.');
  expect(lockOf({ ...at(ceiling), signed: { ...signed, state: 'changed' } })).toBeUndefined();
  expect(lockOf({ ...at(floor), signed })).toBeUndefined();
});

test.each([
  // Open: it may stay so. It has a standard, so that something must be there.
  [floor, [null, 'white-oak-5', 'odd']],
  [ceiling, ['pine-shiplap-1x8', 'alder-nickel-gap-1x8']],
  // Beside the contract: it may be left out.
  [study, ['fir-plank', 'none']],
])('at %s can be picked %j', (id, options) => {
  const tried = triedOptions(at(id));
  expect(tried.map(({ option }) => option)).toEqual(options);
  expect(tried.filter(({ stands }) => stands)).toHaveLength(1);
});
