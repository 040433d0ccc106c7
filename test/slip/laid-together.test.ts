import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  layTogether,
  togetherChoices,
  unsettled,
  type Held,
  type Settled,
  type SlipChoice,
} from '../../src/slip/index.js';

/** A house in words: what stands where; places that it has not are refused. */
const house: Readonly<Record<string, string | null>> = { floor: 'pine', walls: null, base: null, ceiling: 'fir' };

const hold = (choice: SlipChoice): Held => {
  const stands = house[choice.selection];
  // No rule of these tests asks a selection anything.
  const selection = {} as Extract<Held, { is: 'open to it' }>['selection'];
  if (stands === undefined) return { is: 'refused', choice, why: 'There is no such place.' };
  if (stands === choice.now) return { is: 'so already', choice, selection };
  return stands === choice.was ? { is: 'open to it', choice, selection } : { is: 'refused', choice, why: 'It moved.' };
};
const wish = (selection: string, now: string | null, was: string | null = house[selection] ?? null): SlipChoice => ({
  selection,
  was,
  now,
});
const laid = (...slips: readonly (readonly SlipChoice[])[]) =>
  layTogether(
    slips.map((choices) => ({ choices })),
    hold,
  );
const names = (wishes: readonly { readonly slips: readonly number[]; readonly held: Held }[]) =>
  wishes.map(({ slips, held }) => `${held.choice.selection} ${held.choice.now ?? 'open'} ${slips.join('+')}`);

describe('slips laid together on a house', () => {
  test('agree, stand alone, differ, are so already, or no longer fit', () => {
    const hers = [wish('floor', 'oak'), wish('walls', 'oat'), wish('base', 'alder'), wish('attic', 'elm')];
    const his = [wish('floor', 'oak'), wish('walls', 'clay'), wish('ceiling', 'fir', 'pine')];
    const { agreed, single, differing, already, refused } = laid(hers, his);
    expect(names(agreed)).toEqual(['floor oak 0+1']);
    expect(names(single)).toEqual(['base alder 0']);
    expect(differing.map(({ selection, wishes }) => [selection, names(wishes)])).toEqual([
      ['walls', ['walls oat 0', 'walls clay 1']],
    ]);
    expect(names(already)).toEqual(['ceiling fir 1']);
    expect(names(refused)).toEqual(['attic elm 0']);
  });

  test('still differ where what one wants stands by now', () => {
    const { differing, already } = laid([wish('floor', 'pine', null)], [wish('floor', 'oak')]);
    expect(differing.map(({ wishes }) => wishes.map(({ held }) => held.is))).toEqual([['so already', 'open to it']]);
    expect(already).toEqual([]);
  });

  test('do not differ where nothing of it fits any more: each is told', () => {
    const { differing, refused } = laid([wish('attic', 'oak')], [wish('attic', 'elm')]);
    expect(differing).toEqual([]);
    expect(names(refused)).toEqual(['attic oak 0', 'attic elm 1']);
  });

  test('count by the slip that still fits, where they want the same', () => {
    const { agreed } = laid([wish('floor', 'oak', 'elm')], [wish('floor', 'oak', 'pine')]);
    expect(agreed.map(({ held }) => held.choice.was)).toEqual(['pine']);
  });

  test('of one alone are what it wants', () => {
    const all = laid([wish('floor', 'oak'), wish('walls', 'oat')]);
    expect(togetherChoices(all, new Map()).map(({ now }) => now)).toEqual(['oak', 'oat']);
    expect(unsettled(all, new Map())).toEqual([]);
  });

  test.each<[Settled | undefined, readonly string[], number]>([
    [undefined, ['oak'], 1],
    ['as it stands', ['oak'], 0],
    [{ now: 'oat' }, ['oak', 'oat'], 0],
    [{ now: 'clay' }, ['oak', 'clay'], 0],
    // Kept from a slip that was taken away meanwhile.
    [{ now: 'elm' }, ['oak'], 1],
  ])('with a difference settled as %j come to %j', (as, wanted, open) => {
    const all = laid([wish('floor', 'oak'), wish('walls', 'oat')], [wish('walls', 'clay')]);
    const settled = new Map(as === undefined ? [] : [['walls', as] as const]);
    expect(togetherChoices(all, settled).map(({ now }) => now)).toEqual(wanted);
    expect(unsettled(all, settled)).toHaveLength(open);
  });

  test('name each wish once, whoever made it and in whatever order', () => {
    const place = fc.constantFrom('floor', 'walls', 'base', 'ceiling', 'attic');
    const some = fc.constantFrom('oak', 'pine', 'fir', null);
    const choices = fc.uniqueArray(fc.record({ selection: place, was: some, now: some }), {
      selector: ({ selection }) => selection,
    });
    fc.assert(
      fc.property(fc.array(choices, { maxLength: 4 }), (slips) => {
        const { agreed, single, differing, already, refused } = laid(...slips);
        const wishes = [...agreed, ...single, ...differing.flatMap((one) => one.wishes), ...already, ...refused];
        const told = wishes.flatMap(({ slips: of, held }) =>
          of.map((slip) => `${slip} ${held.choice.selection} ${held.choice.now ?? ''}`),
        );
        const made = slips.flatMap((own, slip) => own.map((one) => `${slip} ${one.selection} ${one.now ?? ''}`));
        expect(told.toSorted()).toEqual(made.toSorted());
        const chosen = togetherChoices(laid(...slips), new Map());
        expect(new Set(chosen.map(({ selection }) => selection)).size).toBe(chosen.length);
        for (const choice of chosen) expect(hold(choice).is).toBe('open to it');
      }),
    );
  });
});
