import { priceChoices, type PricedChoices } from '../../../../src/core/book/index.js';
import { selectionId, type Records } from '../../../../src/core/model/index.js';
import { demoHouse } from '../../../demo-house.js';
import { choicesIn, type Choice } from './choice.js';
import { drawnRooms } from './room.js';

/** A house whose every place takes one of its options: what the program makes of it is under test. */
export interface World {
  readonly name: string;
  /** Selections as they stand in it. */
  readonly choices: readonly Choice[];
  readonly priced: PricedChoices;
}

let kept: Promise<readonly World[]> | undefined;

/** The house as recorded; then with each place at its first option, at its second, and so on, the last where there are no more. Railings
 *  stay as they are recorded: they have no second way. Made once for the files that a worker runs. */
export function demoWorlds(): Promise<readonly World[]> {
  kept ??= makeWorlds();
  return kept;
}

async function makeWorlds(): Promise<readonly World[]> {
  const { records, measures } = await demoHouse();
  const choices = choicesIn(drawnRooms().values());
  const most = Math.max(...choices.map(({ options }) => options.length));
  const turns = Array.from({ length: most }, (_, turn) => ({
    name: `with option ${turn + 1} of each place`,
    choices: choices.map((choice) => withChosen(choice, choice.options[Math.min(turn, choice.options.length - 1)])),
  }));
  return [{ name: 'as recorded', choices }, ...turns].map((world) => {
    const { value, problems } = priceChoices(chosenIn(records, world.choices), measures);
    if (!value) throw new Error(`${world.name}: ${problems.map(({ message }) => message).join('; ')}`);
    return { ...world, priced: value };
  });
}

/** Another choice is not ordered. */
export function withChosen(choice: Choice, chosen: string | undefined): Choice {
  if (chosen === undefined || chosen === choice.chosen || choice.category === 'railing') return choice;
  return { ...choice, chosen, isOrdered: false };
}

/** The records with these choices written into them. */
function chosenIn(records: Records, choices: readonly Choice[]): Records {
  const byId = new Map(choices.map((choice) => [choice.id, choice.chosen]));
  return {
    ...records,
    rooms: records.rooms.map((room) => ({
      ...room,
      selections: room.selections.map((selection) => {
        const chosen = byId.get(selectionId(room.slug, selection));
        return chosen === undefined || chosen === selection.chosen ? selection : { ...selection, chosen, facts: [] };
      }),
    })),
  };
}
