import type { FeatureKind } from '../feature/index.js';
import type { FeatureRecord, Opening, Room, RoomPlace, RoomSection, Selection } from '../model/index.js';
import { hasErrors, type Problem } from '../../base/problem/index.js';
import { knownNames, looseNames, type Checked } from './checked-record.js';
import type { RawRoom, RawRoomSection } from './raw/room.js';
import { readCeiling } from './read-ceiling.js';
import { readFloor } from './read-floor.js';
import { readFeatures } from './read-features.js';
import { readOpenings } from './read-openings.js';
import { readSelections } from './read-selections.js';
import { readShape, readVoids, sidesOf, type Side } from './read-shape.js';
import { parseLength } from '../../base/units/index.js';
import { passed, readLength } from './formats.js';

/** A room's record, as far as it can be read. */
export interface RoomDraft {
  readonly slug: string;
  /** The room's name, or its slug where the name is wrong. */
  readonly name: string;
  readonly record: Checked<RawRoom>;
  /** Absent when the shape is wrong. */
  readonly sides?: readonly Side[];
  readonly openings: readonly Opening[];
  readonly features: readonly FeatureRecord[];
  readonly selections: readonly Selection[];
  /** Names that selections may refer to, even where the rest of the entry is wrong. */
  readonly marks: ReadonlySet<string>;
  readonly featureIds: ReadonlySet<string>;
  /** Are these all there are? Where not, a name that is not among them may be right. */
  readonly knowsMarks: boolean;
  readonly knowsFeatures: boolean;
  readonly whole?: Room;
  readonly problems: readonly Problem[];
}

export function readRoom(record: Checked<RawRoom>, kinds: readonly FeatureKind<unknown>[]): RoomDraft {
  const { slug, raw, body, origin } = record;
  const shape = readShape(record);
  const ceiling = readCeiling(record, shape.value);
  const [openings, selections] = [readOpenings(record), readSelections(record)];
  const features = readFeatures(record, kinds);
  const problems = [
    ...record.problems,
    ...shape.problems,
    ...ceiling.problems,
    ...openings.problems,
    ...selections.problems,
  ];
  const draft = {
    slug,
    name: record.sound(['name']) && typeof raw.name === 'string' ? raw.name : slug,
    record,
    ...(shape.value && { sides: sidesOf(shape.value) }),
    openings: openings.value ?? [],
    features,
    selections: selections.value ?? [],
    marks: looseNames(record, 'openings', 'mark'),
    featureIds: looseNames(record, 'features', 'id'),
    knowsMarks: knownNames(record, 'openings', 'mark') !== undefined,
    knowsFeatures: knownNames(record, 'features', 'id') !== undefined,
    problems,
  };
  if (hasErrors(problems) || !shape.value || !ceiling.value) return draft;
  const whole: Room = {
    slug,
    name: raw.name,
    number: raw.number,
    level: raw.level,
    ...(raw['above-ground'] !== undefined && { aboveGround: passed(parseLength(raw['above-ground'])) }),
    use: raw.use,
    shape: shape.value,
    ...(raw['wall-types'] && { wallTypes: raw['wall-types'] }),
    ...(raw.jogs && { jogs: raw.jogs }),
    ...(raw.place && { place: readPlace(raw.place) }),
    ...(raw.floor && { floor: readFloor(raw.floor, shape.value) }),
    voids: readVoids(record, shape.value),
    ceiling: ceiling.value,
    openings: draft.openings,
    features,
    selections: draft.selections,
    ...(raw['view-from'] && { viewFrom: raw['view-from'] }),
    ...(raw.sections && { sections: raw.sections.map(readSection) }),
    body,
    origin,
  };
  return { ...draft, whole };
}

function readSection({ name, at, looks }: RawRoomSection): RoomSection {
  return { name, at: passed(readLength(at)), looks };
}

function readPlace({ from, x, y }: NonNullable<RawRoom['place']>): RoomPlace {
  return { from, at: { x: passed(parseLength(x)), y: passed(parseLength(y)) } };
}
