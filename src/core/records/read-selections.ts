import type { Selection } from '../model/index.js';
import { problemAt, type Origin, type Outcome, type Path, type Problem } from '../../base/problem/index.js';
import { parsePercent } from '../../base/units/index.js';
import { soundItems, type Checked } from './checked-record.js';
import { passed } from './formats.js';
import type { RawRoom, RawSelection } from './raw/room.js';

/** Selections of a room that the schema has passed, with what their own dates have against each other. */
export function readSelections(record: Checked<RawRoom>): Outcome<readonly Selection[]> {
  const selections = soundItems<RawSelection>(record, 'selections').map(({ raw, path }) => readSelection(raw, path));
  return { value: selections, problems: selections.flatMap((selection) => dateProblems(selection, record.origin)) };
}

function readSelection(raw: RawSelection, path: Path): Selection {
  const { standard, allowance, chosen, note, waste, install, courses } = raw;
  const [chosenOn, chosenBy] = [raw['chosen-on'], raw['chosen-by']];
  const [orderedOn, installedOn] = [raw['ordered-on'], raw['installed-on']];
  return {
    at: typeof raw.at === 'string' ? [raw.at] : raw.at,
    category: raw.category,
    ...(standard !== undefined && { standard }),
    ...(allowance !== undefined && { allowance }),
    considering: raw.considering ?? [],
    ...(chosen !== undefined && { chosen }),
    ...(chosenOn !== undefined && { chosenOn }),
    ...(chosenBy !== undefined && { chosenBy }),
    supply: raw.supply ?? 'contractor',
    ...(install !== undefined && { install }),
    ...(orderedOn !== undefined && { orderedOn }),
    ...(installedOn !== undefined && { installedOn }),
    ...(note !== undefined && { note }),
    ...(waste !== undefined && { waste: passed(parsePercent(waste)) }),
    ...(courses !== undefined && { courses }),
    path,
  };
}

/** A thing is chosen, then ordered, then installed. */
function dateProblems(selection: Selection, origin: Origin): readonly Problem[] {
  const { chosen, chosenOn, orderedOn, installedOn, path } = selection;
  const steps = [
    { key: 'chosen-on', word: 'chosen', day: chosenOn },
    { key: 'ordered-on', word: 'ordered', day: orderedOn },
    { key: 'installed-on', word: 'installed', day: installedOn },
  ].flatMap(({ key, word, day }) => (day === undefined ? [] : [{ key, word, day }]));
  if (chosen === undefined) {
    return steps.map(({ key, word }) =>
      problemAt(origin, [...path, key], 'date-without-choice', `${word} on a day, but nothing is chosen`, {
        fix: 'write chosen, or leave the day out',
        onKey: true,
      }),
    );
  }
  return steps.slice(1).flatMap((step, index) => {
    const before = steps[index];
    if (!before || before.day <= step.day) return [];
    const message = `${step.word} on ${step.day}, before it was ${before.word} on ${before.day}`;
    return [problemAt(origin, [...path, step.key], 'date-order', message, { fix: 'check both days' })];
  });
}
