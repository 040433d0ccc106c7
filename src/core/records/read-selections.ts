import type { Exception, Selection } from '../model/index.js';
import type { Outcome, Path } from '../../base/problem/index.js';
import { parsePercent } from '../../base/units/index.js';
import { soundItems, type Checked } from './checked-record.js';
import { passed, readDimension, readLength } from './formats.js';
import { factProblemsOf, readFacts, readInsteadOf } from './read-facts.js';
import type { RawRoom, RawSelection } from './raw/room.js';

/** Selections of a room that the schema has passed, with what their own days and facts have against each other. */
export function readSelections(record: Checked<RawRoom>): Outcome<readonly Selection[]> {
  const selections = soundItems<RawSelection>(record, 'selections').map(({ raw, path }) => {
    const set = record.origin.elsewhere?.(path)?.from;
    return { ...readSelection(raw, path), ...(set !== undefined && { finishSet: set }) };
  });
  return { value: selections, problems: selections.flatMap((selection) => factProblemsOf(selection, record.origin)) };
}

function readException(raw: NonNullable<RawSelection['except']>[number]): Exception {
  if (typeof raw === 'string') return { place: raw };
  return { place: raw.wall, from: passed(readLength(raw.from)), to: passed(readDimension(raw.to)) };
}

function readSelection(raw: RawSelection, path: Path): Selection {
  const { standard, allowance, chosen, slip, note, waste, install, courses } = raw;
  const [chosenOn, chosenBy] = [raw['chosen-on'], raw['chosen-by']];
  const [keptOpen, needsDone, insteadOf] = [raw['kept-open-by'], raw['needs-done'], raw['instead-of']];
  return {
    at: typeof raw.at === 'string' ? [raw.at] : raw.at,
    ...(raw.except && { except: raw.except.map(readException) }),
    category: raw.category,
    ...(standard !== undefined && { standard }),
    ...(allowance !== undefined && { allowance }),
    considering: raw.considering ?? [],
    ...(chosen !== undefined && { chosen }),
    ...(chosenOn !== undefined && { chosenOn }),
    ...(chosenBy !== undefined && { chosenBy }),
    ...(slip !== undefined && { slip }),
    supply: raw.supply ?? 'contractor',
    ...(install !== undefined && { install }),
    ...(keptOpen && { keptOpen: Object.entries(keptOpen).map(([milestone, done]) => ({ milestone, ...done })) }),
    ...(needsDone && { needsDone }),
    facts: readFacts(raw),
    ...(insteadOf && { insteadOf: readInsteadOf(insteadOf) }),
    ...(note !== undefined && { note }),
    ...(waste !== undefined && { waste: passed(parsePercent(waste)) }),
    ...(courses !== undefined && { courses }),
    path,
  };
}
