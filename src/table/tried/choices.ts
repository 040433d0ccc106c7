import type { Alternative, BookSelection, LookUp } from '../../core/book/index.js';
import { describePush, describeSlack, type Decision } from '../../core/calendar/index.js';
import { col, layOut, type HouseBlock, type HouseTable } from '../../sheet/index.js';
import type { Cents } from '../../base/units/index.js';
import { choiceTitle } from '../choice.js';
import { namesOf } from '../names-of.js';
import { standsWords } from './stands.js';

/** A place at which something is tried. */
export interface TriedChoice {
  readonly before: BookSelection;
  readonly after: BookSelection;
  readonly place: string;
  /** What was decided, or stands meanwhile, in words. */
  readonly was: string;
  readonly now: string;
  /** By when to decide for what is tried: of the option alone, as it stood before it was picked. */
  readonly decision: Decision;
}

/** What is tried by two Books, in the order asked for. */
export function triedChoices(from: LookUp, to: LookUp, selections: readonly string[]): readonly TriedChoice[] {
  return selections.flatMap((id) => {
    const [before, after] = [from.selection(id), to.selection(id)];
    if (!before || !after) return [];
    const isPicked = ({ option }: Alternative): boolean => option === after.chosen;
    const picked = before.alternatives.find(isPicked) ?? after.alternatives.find(isPicked);
    return [
      {
        before,
        after,
        place: choiceTitle(after, to),
        was: standsWords(before, from),
        now: standsWords(after, to),
        decision: picked?.decision ?? before.decision,
      },
    ];
  });
}

const table: HouseTable<TriedChoice> = {
  id: 'tried-choices',
  caption: 'What is tried, place by place',
  named: 'place',
  rowId: ({ after }) => after.id,
  columns: [
    col.words('place', 'Place', ({ place, after: { id } }) => ({ text: place, place: { to: 'selection', id } }), {
      width: 'words',
    }),
    col.room('room', 'Room', ({ after: { room } }, names) => names.room(room), { under: 'place' }),
    col.words('now', 'Tried', ({ now }) => now, { width: 'words' }),
    col.words('was', 'Instead of', ({ was }) => `instead of ${was}`, { under: 'now' }),
    col.money('costBefore', 'In place before', ({ before }) => before.cost.total),
    col.money('cost', 'In place with it', ({ after }) => after.cost.total),
    col.money('change', 'Change beside allowances', changeHere, { change: true }),
    col.day('decideBy', 'Decide by', ({ decision }) => decision.by),
    col.words('days', 'Days', ({ decision }) => daysWords(decision), { under: 'decideBy', width: 'words' }),
    col.day('orderBy', 'Order by', ({ after }) => (after.chosen === undefined ? undefined : after.decision.orderBy)),
  ],
};

function changeHere({ before, after }: TriedChoice): Cents {
  return (after.change - before.change) as Cents;
}

function daysWords(decision: Decision): string {
  if (decision.state === 'decided') return '';
  const push = describePush(decision);
  return push === '' ? describeSlack(decision.slack) : `${describeSlack(decision.slack)}. ${push}`;
}

export function choicesTable(choices: readonly TriedChoice[], to: LookUp): HouseBlock {
  return layOut(table, choices, namesOf(to));
}
