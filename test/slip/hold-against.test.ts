import { expect, test } from 'vitest';
import { holdAgainst, type SlipChoice } from '../../src/slip/index.js';
import { smallBook } from '../book/small-house.js';

const floor = 'study/floor/floor';
const oak: SlipChoice = { selection: floor, was: 'pine', now: 'oak' };

/** What becomes of one choice of 20 April against the small house, with its floor chosen as said, and with the oak as it may be. */
function held(
  choice: SlipChoice,
  chosen = 'chosen: pine',
  more: NonNullable<Parameters<typeof smallBook>[0]> = {},
): readonly [string, string] {
  const book = smallBook({ 'content/rooms/study.md': [['chosen: pine', chosen]], ...more }, '2026-04-20', () => true);
  const one = holdAgainst(book)(choice, '2026-04-20');
  return [one.is, one.is === 'refused' ? one.why : ''];
}

test('a choice may be taken where what stood then stands still', () => {
  expect(held(oak)).toEqual(['open to it', '']);
  expect(held({ ...oak, now: null })).toEqual(['open to it', '']);
  expect(held({ ...oak, was: 'none' }, 'chosen: none')).toEqual(['open to it', '']);
});

test('a choice that stands stands, whatever was before', () => {
  expect(held({ ...oak, now: 'pine', was: 'elm' })).toEqual(['so already', '']);
  expect(held({ ...oak, now: 'none' }, 'chosen: none')).toEqual(['so already', '']);
});

test('a choice is refused where something else stands, with who chose that', () => {
  const [is, why] = held({ ...oak, was: null }, 'chosen: pine\n    chosen-on: 2026-04-02\n    chosen-by: The builder');
  expect([is, why]).toEqual([
    'refused',
    'It was open when this was chosen, and is Pine strip now, chosen by The builder on 2 April 2026; wanted is Oak strip.',
  ]);
  expect(held({ ...oak, was: null }, 'chosen: pine\n    chosen-on: 2026-04-02')[1]).toContain(
    'is Pine strip now, chosen on 2 April 2026; wanted',
  );
});

test('a choice is refused for a place or an option that is gone, and for what is ordered or released', () => {
  expect(held({ ...oak, selection: 'attic/floor/floor' })[0]).toBe('refused');
  expect(held({ ...oak, now: 'larch' })).toEqual(['refused', "There is no option 'larch' any more."]);
  expect(held(oak, 'chosen: pine\n    released: { on: 2026-03-02, option: pine }')[1]).toBe(
    'Released on 2 March 2026; it is changed in the record, with instead-of.',
  );
  // That it stands already is no conflict, ordered or not.
  expect(held({ ...oak, now: 'pine' }, 'chosen: pine\n    released: { on: 2026-03-02, option: pine }')[0]).toBe(
    'so already',
  );
});

test.each([
  ['2026-04-19', 'refused', 'It was withdrawn on 19 April 2026: The mill burned down.'],
  ['2026-04-20', 'open to it', ''],
])('a choice of 20 April of what was withdrawn on %s: %s', (on, is, why) => {
  const gone = `name: Oak strip\nwithdrawn: { on: ${on}, why: The mill burned down }`;
  expect(held(oak, 'chosen: pine', { 'content/options/floor/oak.md': [['name: Oak strip', gone]] })).toEqual([is, why]);
});
