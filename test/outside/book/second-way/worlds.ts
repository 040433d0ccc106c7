import { priceChoices, type PricedChoices } from '../../../../src/core/book/index.js';
import { selectionId, type Records, type RoomMeasure } from '../../../../src/core/model/index.js';
import type { Choice } from './choice.js';

/** A house whose every place takes one of its options: what the program makes of it is under test. */
export interface World {
  readonly name: string;
  /** Selections as they stand in it. */
  readonly choices: readonly Choice[];
  readonly priced: PricedChoices;
}

/** The house as recorded; then with each place at its first option, at its second, and so on, the last where there are no more. Railings
 *  stay as they are recorded: they have no second way. */
export function worldsOf(
  choices: readonly Choice[],
  records: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
): readonly World[] {
  const most = Math.max(...choices.map(({ options }) => options.length));
  const turns = Array.from({ length: most }, (_, turn) => ({
    name: `with option ${turn + 1} of each place`,
    choices: choices.map((choice) => standing(choice, choice.options[Math.min(turn, choice.options.length - 1)])),
  }));
  return [{ name: 'as recorded', choices }, ...turns].map((world) => {
    const { value, problems } = priceChoices(chosenIn(records, world.choices), measures);
    if (!value) throw new Error(`${world.name}: ${problems.map(({ message }) => message).join('; ')}`);
    return { ...world, priced: value };
  });
}

function standing(choice: Choice, slug: string | undefined): Choice {
  if (slug === undefined || slug === choice.chosen || choice.category === 'railing') return choice;
  return { ...choice, chosen: slug, isOrdered: false };
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
