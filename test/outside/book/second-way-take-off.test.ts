import { describe, expect, test } from 'vitest';
import type { Takeoff } from '../../../src/core/takeoff/index.js';
import { choicesIn, countedOf, type Choice } from './second-way/choice.js';
import { drawnRooms } from './second-way/room.js';
import { suppliesOf } from './second-way/supply.js';
import { isWorked, takenBy } from './second-way/take-off.js';
import { demoWorlds } from './second-way/worlds.js';

/** What the demo house takes of each option by a second way, from the measures of `second-way/`: net by the category's record, required
 *  with coats and waste, and what is used up with it. No publication is behind it: the same records are worked by other formulas. Left out:
 *  railings with their posts, layouts of boards and sheets, timbers cut from stock, counts in trade units. */

const rooms = drawnRooms();
const choices = choicesIn(rooms.values());
const worlds = await demoWorlds();
const near = 4;

test('the same places are selected', () => {
  const [today] = worlds;
  expect(today?.priced.selections.map(({ id }) => id).sort()).toEqual(choices.map(({ id }) => id).sort());
});

describe.each(worlds.map((world) => [world.name, world] as const))(
  'the demo %s is taken off a second way',
  (_, world) => {
    const selections = new Map(world.priced.selections.map((selection) => [selection.id, selection]));

    test.each([...rooms.keys()])('%s', (room) => {
      const worked = world.choices.filter((choice) => choice.room.slug === room && isWorked(choice));
      for (const choice of worked) {
        const { counted, takeoff = [] } = selections.get(choice.id) ?? {};
        expect(counted, choice.id).toBe(countedOf(choice));
        if (counted !== undefined) expectAlike(choice, counted, takeoff, world.choices);
      }
    });
  },
);

function expectAlike(choice: Choice, counted: string, takeoff: readonly Takeoff[], all: readonly Choice[]): void {
  const { id } = choice;
  const other = takenBy(choice, counted, all);
  expect(takeoff.map(({ part }) => part).sort(), id).toEqual([...other.keys()].sort());
  for (const { part, unit, net, required } of takeoff) {
    const figures = other.get(part);
    expect(unit, `${id}: unit of ${counted}`).toBe(figures?.unit);
    expect(net, `${id}: net of ${counted}, ${part}`).toBeCloseTo(figures?.net ?? NaN, near);
    expect(required, `${id}: required of ${counted}, ${part}`).toBeCloseTo(figures?.required ?? NaN, near);
  }
  const used = takeoff.flatMap(({ supplies = [] }) => supplies);
  const expected = suppliesOf(choice, counted, other);
  expect(
    used.map(({ what }) => what),
    `${id}: supplies with ${counted}`,
  ).toEqual(expected.map(([what]) => what));
  used.forEach(({ what, required }, index) => {
    expect(required, `${id}: ${what} with ${counted}`).toBeCloseTo(expected[index]?.[1] ?? NaN, near);
  });
}
