import type { Division, DoorFacts, Opening, OwnOpening } from '../model/index.js';
import { problemAt, type Outcome, type Path, type Problem } from '../../base/problem/index.js';
import { parseLength, type Length } from '../../base/units/index.js';
import { soundItems, type Checked } from './checked-record.js';
import { passed, readDimension, readLength } from './formats.js';
import type { RawOpening, RawOwnOpening, RawRoom } from './raw/room.js';
import { readShapeOf, shapeProblems } from './read-opening-shape.js';

/** Openings of a room that the schema has passed. */
export function readOpenings(record: Checked<RawRoom>): Outcome<readonly Opening[]> {
  const shapes: Problem[] = [];
  const openings = soundItems<RawOpening>(record, 'openings').flatMap(({ raw, path }) => {
    const wrong = 'recorded-in' in raw ? [] : shapeProblems(raw, path, record.origin);
    shapes.push(...wrong);
    // A shape that its size does not hold would be measured as another one.
    return wrong.length > 0 ? [] : [readOpening(raw, path)];
  });
  const problems = openings.flatMap((opening) => [
    ...doorProblems(opening, record),
    ...slideProblems(opening, record),
    ...factProblems(opening, record),
    ...glassProblems(opening, record),
  ]);
  return { value: openings, problems: [...shapes, ...problems] };
}

function readOpening(raw: RawOpening, path: Path): Opening {
  const at = passed(readLength(raw.at));
  if ('recorded-in' in raw) {
    return { by: 'seen', mark: raw.mark, recordedIn: raw['recorded-in'], wall: raw.wall, at, path };
  }
  const shape = raw.shape && readShapeOf(raw.shape);
  return {
    by: 'own',
    mark: raw.mark,
    kind: raw.kind,
    wall: raw.wall,
    at,
    width: passed(readDimension(raw.width)),
    height: passed(readDimension(raw.height)),
    ...(shape && { shape }),
    sill: raw.sill === undefined ? (0 as Length) : passed(parseLength(raw.sill)),
    to: raw.to,
    ...(raw.hinge && { hinge: raw.hinge }),
    ...(raw.swing !== undefined && { swing: raw.swing }),
    operation: operationOf(raw),
    ...(raw.slides && { slides: raw.slides }),
    ...doorOf(raw),
    ...(raw.glass && { glass: raw.glass }),
    ...(raw.division !== undefined && { division: readDivision(raw.division) }),
    ...(raw.note !== undefined && { note: raw.note }),
    path,
  };
}

function doorOf(raw: RawOwnOpening): { readonly door?: DoorFacts } {
  const { function: locks, stop, undercut, flush } = raw;
  const fireRating = raw['fire-rating'];
  const door: DoorFacts = {
    ...(locks && { function: locks }),
    ...(stop && { stop }),
    ...(undercut !== undefined && { undercut: passed(readDimension(undercut)) }),
    ...(fireRating !== undefined && { fireRating }),
    ...(flush && { flush }),
  };
  return Object.keys(door).length === 0 ? {} : { door };
}

function operationOf({ kind, operation }: RawOwnOpening): OwnOpening['operation'] {
  return operation ?? (kind === 'door' ? 'swing' : 'fixed');
}

function doorProblems(opening: Opening, { origin }: Checked<RawRoom>): readonly Problem[] {
  if (opening.by === 'seen' || opening.kind !== 'door' || opening.sill === 0) return [];
  const fix = 'leave the sill out, or make it a window';
  return [
    problemAt(origin, [...opening.path, 'sill'], 'door-sill', `door ${opening.mark} has a sill above the floor`, {
      fix,
    }),
  ];
}

/** Only a leaf that goes into its wall has a side that it goes to. */
function slideProblems(opening: Opening, { origin }: Checked<RawRoom>): readonly Problem[] {
  if (opening.by === 'seen' || opening.slides === undefined) return [];
  if (opening.kind === 'door' && opening.operation === 'pocket') return [];
  const message = `${opening.mark} is no pocket door, and says 'slides'`;
  const fix = 'leave it out, or write kind: door and operation: pocket';
  return [problemAt(origin, [...opening.path, 'slides'], 'door-fact', message, { fix })];
}

/** A window has no lock, and a cased opening no leaf. */
function factProblems(opening: Opening, { origin }: Checked<RawRoom>): readonly Problem[] {
  if (opening.by === 'seen' || opening.kind === 'door' || !opening.door) return [];
  const [fact = ''] = Object.keys(opening.door);
  const key = fact === 'fireRating' ? 'fire-rating' : fact;
  const message = `${opening.mark} is no door, and says '${key}'`;
  return [
    problemAt(origin, [...opening.path, key], 'door-fact', message, { fix: 'leave it out, or write kind: door' }),
  ];
}

/** `2x3`, which the schema has passed. */
function readDivision(text: string): Division {
  const [across = 1, up = 1] = text.split('x').map(Number);
  return { across, up };
}

/** A cased or open opening has no pane. */
function glassProblems(opening: Opening, { origin }: Checked<RawRoom>): readonly Problem[] {
  if (opening.by === 'seen' || opening.kind === 'door' || opening.kind === 'window') return [];
  return (['glass', 'division'] as const)
    .filter((key) => opening[key] !== undefined)
    .map((key) => {
      const message = `${opening.mark} is neither window nor door, and says '${key}'`;
      const fix = 'leave it out, or write kind: window';
      return problemAt(origin, [...opening.path, key], 'door-fact', message, { fix });
    });
}
