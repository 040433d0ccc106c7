import { problemAt, type Problem } from '../../../base/problem/index.js';
import { printLength } from '../../../base/units/index.js';
import type { Draft } from '../draft.js';
import type { RawFeature } from '../raw/room.js';
import { placeWords } from '../read-shape.js';
import type { RoomDraft } from '../read-room.js';
import { some, unknown } from './unknown.js';

/** Numbers are unique in the house, levels are known, sides are open to known rooms. */
export function roomReferences({ rooms, house, slugs }: Draft): readonly Problem[] {
  const numbers = new Map<string, RoomDraft>();
  return rooms.flatMap((room) => {
    const { raw, origin, sound } = room.record;
    const problems: Problem[] = [...nameProblems(room), ...voidNames(room), ...floorNames(room), ...sectionNames(room)];
    if (sound(['number']) && typeof raw.number === 'string') {
      const other = numbers.get(raw.number);
      if (other) {
        const message = `number ${raw.number} is also that of ${other.name}`;
        const fix = `numbers are unique in the house; the other is in ${other.record.origin.file}`;
        problems.push(problemAt(origin, ['number'], 'number-duplicate', message, { fix }));
      } else numbers.set(raw.number, room);
    }
    if (house?.levelIds && sound(['level']) && typeof raw.level === 'string' && !house.levelIds.has(raw.level)) {
      const [among, name] = [house.levelIds, raw.level];
      const message = `the house has no level '${name}'`;
      problems.push(
        unknown(origin, ['level'], { code: 'level-unknown', message, name, among, lives: `Levels are ${some(among)}` }),
      );
    }
    const open = [
      ...(room.sides ?? []).map(({ name, openTo, path }) => ({
        name: `'${name}'`,
        to: openTo,
        at: path[0] === 'open' ? path : [...path, 'open-to'],
      })),
      ...(room.whole?.ceiling ?? []).map(({ name, openAbove, path }) => ({
        name: `${name} above ${openAbove ? printLength(openAbove.height) : ''}`,
        to: openAbove?.to,
        at: [...path, 'open-above', 'to'],
      })),
    ].map((side) => ({ ...side, what: `${side.name} is open to` }));
    const led = room.features.map(({ name, path }) => ({
      what: `${name} arrives in`,
      to: arrivesIn(raw.features?.[Number(path[1])]),
      at: [...path, 'to'],
    }));
    for (const { what, to, at } of [...open, ...led]) {
      if (to === room.slug) {
        const fix = 'write the room on the other side, or outside';
        problems.push(problemAt(origin, at, 'opening-to-itself', `${what} its own room`, { fix }));
        continue;
      }
      if (to === undefined || to === 'outside' || slugs.rooms.has(to)) continue;
      const message = `${what} a room '${to}', which there is not`;
      const lives = 'Rooms live in content/rooms/';
      problems.push(unknown(origin, at, { code: 'room-unknown', message, name: to, among: slugs.rooms, lives }));
    }
    return problems;
  });
}

/** The room that a stair is said to arrive in. */
function arrivesIn(feature: RawFeature | undefined): string | undefined {
  const to = feature?.['to'];
  return typeof to === 'string' ? to : undefined;
}

/** Edges name the hole that they run along. */
function voidNames({ whole, record: { origin } }: RoomDraft): readonly Problem[] {
  const names = whole?.voids.map(({ name }) => name) ?? [];
  return repeated(names).map(({ name, index }) =>
    problemAt(origin, ['voids', index, 'name'], 'void-duplicate', `the floor has two holes '${name}'`, {
      fix: 'give the hole another name',
    }),
  );
}

function sectionNames({ whole, record: { origin } }: RoomDraft): readonly Problem[] {
  const names = whole?.sections?.map(({ name }) => name) ?? [];
  return repeated(names).map(({ name, index }) =>
    problemAt(origin, ['sections', index, 'name'], 'section-duplicate', `the room has two sections '${name}'`, {
      fix: 'give the section another name',
    }),
  );
}

/** Risers are named after the parts that they lie between; what lies at 0 is the floor. */
function floorNames({ whole, record: { origin } }: RoomDraft): readonly Problem[] {
  const names = ['Floor', ...(whole?.floor ?? []).map(({ name }) => name)];
  return repeated(names).map(({ name, index }) =>
    problemAt(origin, ['floor', index - 1, 'name'], 'floor-duplicate', `the floor has two parts '${name}'`, {
      fix:
        name === 'Floor' ? 'the rest of the floor has that name: give the part another' : 'give the part another name',
    }),
  );
}

/** Names that stood before, with their places. */
function repeated(names: readonly string[]): readonly { readonly name: string; readonly index: number }[] {
  return names.flatMap((name, index) => (names.indexOf(name) === index ? [] : [{ name, index }]));
}

/** In a room each wall, opening and feature has a name of its own, and none is named after a kind of place. */
function nameProblems({ sides = [], openings, features, record: { origin } }: RoomDraft): readonly Problem[] {
  const seen = new Map<string, string>();
  const named = [
    ...sides.map(({ name, path }) => ({
      name,
      what: 'wall',
      path: path[0] === 'outline' ? [...path, 'wall'] : [...path, 'name'],
    })),
    ...openings.map(({ mark, path }) => ({ name: mark, what: 'opening', path: [...path, 'mark'] })),
    ...features.map(({ id, path }) => ({ name: id, what: 'feature', path: [...path, 'id'] })),
  ];
  return named.flatMap(({ name, what, path }) => {
    if (placeWords.some((word) => word === name)) {
      const message = `'${name}' is the word for a place in every room`;
      return [problemAt(origin, path, 'name-reserved', message, { fix: `give the ${what} another name` })];
    }
    const other = seen.get(name);
    seen.set(name, other ?? what);
    if (other === undefined) return [];
    const article = other === 'opening' ? 'an' : 'a';
    const message =
      other === what ? `the room has two ${what}s '${name}'` : `'${name}' is the name of ${article} ${other} here`;
    const code = what === 'wall' ? 'wall-duplicate' : what === 'opening' ? 'mark-duplicate' : 'feature-duplicate';
    const fix = `give the ${what} another ${what === 'opening' ? 'mark' : 'name'}`;
    return [problemAt(origin, path, code, message, { fix })];
  });
}
