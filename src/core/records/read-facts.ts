import { factSteps, type InsteadOf, type Selection, type SelectionFact } from '../model/index.js';
import { problemAt, type Origin, type Path, type Problem } from '../../base/problem/index.js';
import { printDay, type IsoDate } from '../../base/units/index.js';
import { passed, readMoney } from './formats.js';
import type { RawInsteadOf, RawSelection } from './raw/room.js';

/** What a selection's record says happened after the choice, in the order in which it happens. */
export function readFacts(raw: RawSelection): readonly SelectionFact[] {
  return factSteps.flatMap((step) => {
    const fact = raw[step];
    return fact ? [{ step, ...fact }] : [];
  });
}

export function readInsteadOf({ option, 'chosen-on': chosenOn, on, why, order, restocking }: RawInsteadOf): InsteadOf {
  return {
    option,
    ...(chosenOn !== undefined && { chosenOn }),
    on,
    why,
    ...(order !== undefined && { order }),
    ...(restocking !== undefined && { restocking: passed(readMoney(restocking)) }),
  };
}

/** Facts need a choice, come in their order, and are of the option that is chosen. */
export function factProblemsOf(selection: Selection, origin: Origin): readonly Problem[] {
  if (selection.chosen === undefined) return withoutChoice(selection, origin);
  const changed = changedAfter(selection, origin);
  return changed.length > 0 ? changed : outOfOrder(selection, origin);
}

/** The days of a choice and what came of it, with where each is written. */
function daysOf({ chosenOn, facts, path }: Selection): readonly Day[] {
  return [
    ...(chosenOn === undefined
      ? []
      : [{ word: 'chosen', on: chosenOn, key: 'chosen-on', path: [...path, 'chosen-on'] }]),
    ...facts.map(({ step, on }) => ({ word: step, on, key: step, path: [...path, step, 'on'] })),
  ];
}

interface Day {
  readonly word: string;
  readonly on: IsoDate;
  readonly key: string;
  readonly path: Path;
}

function withoutChoice(selection: Selection, origin: Origin): readonly Problem[] {
  return daysOf(selection).map(({ word, key }) =>
    problemAt(origin, [...selection.path, key], 'date-without-choice', `${word} on a day, but nothing is chosen`, {
      fix: 'write chosen, or leave the day out',
      onKey: true,
    }),
  );
}

/** A thing is chosen, released, ordered, and so on until it is installed. */
function outOfOrder(selection: Selection, origin: Origin): readonly Problem[] {
  const days = daysOf(selection);
  return days.slice(1).flatMap((day, index) => {
    const before = days[index];
    if (!before || before.on <= day.on) return [];
    // Of a choice that was changed, what happened before the change may be older than the choice.
    if (before.word === 'chosen' && selection.insteadOf) return [];
    const message = `${day.word} on ${day.on}, before it was ${before.word} on ${before.on}`;
    return [problemAt(origin, day.path, 'date-order', message, { fix: 'check both days', severity: 'warning' })];
  });
}

/** What was released or ordered is what is chosen, or the record says what stood before the change. */
function changedAfter({ chosen = '', facts, insteadOf, path }: Selection, origin: Origin): readonly Problem[] {
  const other = facts.findLast(({ option }) => option !== undefined && option !== chosen);
  if (!other || other.option === insteadOf?.option) return [];
  const { step, option = '', on, by, number } = other;
  const order = `${number === undefined ? '' : ` as order ${number}`}${by === undefined ? '' : ` by ${by}`}`;
  const message = `'${chosen}' is chosen, but '${option}' was ${step} on ${printDay(on)}${order}`;
  const fix = `write chosen: ${option}, or say what was changed: instead-of: { option: ${option}, on: …, why: … }`;
  return [problemAt(origin, [...path, 'chosen'], 'chosen-after-order', message, { fix })];
}
