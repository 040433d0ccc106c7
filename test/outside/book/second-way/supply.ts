import { productOf, type Choice } from './choice.js';
import { heightAt, spotAt, within } from './face.js';
import { feetOf, groupOf, groupsOf, listOf, numberOf, shareOf, sum, text, type Fields } from './paper.js';
import type { Drawn, Side } from './room.js';
import { placesOf, type Taken } from './take-off.js';

/** What is used up with the first part of an option: `Joint tape 12.3456` by name and what is required. */
export function suppliesOf(
  choice: Choice,
  slug: string,
  taken: ReadonlyMap<string, Taken>,
): readonly (readonly [string, number])[] {
  const option = productOf(choice.category, slug);
  const [first] = taken.values();
  return groupsOf(choice.rule['supplies']).flatMap((supply) => {
    const quantity = first && suits(supply, option) ? followed(supply, choice, first) : 0;
    if (quantity === 0) return [];
    const [amount = '', per = ''] = text(supply['amount']).split(' / ');
    const own = supply['times-by'];
    const times = own === undefined ? 1 : Number(groupOf(option['attributes'])[text(own)]);
    const joints = per === 'cu ft' ? jointsIn(option) : 1;
    const each = /^\d/u.test(per) ? numberOf(per) : 1;
    const name = supply['named-by'];
    const what = name === undefined ? '' : `, ${text(groupOf(option['attributes'])[text(name)])}`;
    const required = ((quantity * times * joints) / each) * numberOf(amount) * (1 + shareOf(supply['waste']));
    return [[text(supply['what']) + what, required] as const];
  });
}

function suits(supply: Fields, option: Fields): boolean {
  return Object.entries(groupOf(supply['when'])).every(([attribute, says]) =>
    listOf(says)
      .map(text)
      .includes(String(groupOf(option['attributes'])[attribute])),
  );
}

function followed(supply: Fields, choice: Choice, { covered }: Taken): number {
  switch (supply['goes-with']) {
    case undefined:
      return covered;
    case 'outside-corners':
      return cornersOf(choice);
    case 'pairs':
      return leavesOf(choice).filter(({ operation }) => operation === 'double').length;
    default:
      return sum(leavesOf(choice).map(hinges));
  }
}

function leavesOf(choice: Choice): readonly Drawn['openings'][number][] {
  return choice.room.openings.filter(
    ({ mark, kind, own }) => placesOf(choice).includes(mark) && kind === 'door' && own,
  );
}

/** Two up to five feet, three up to seven and a half, four up to ten. */
function hinges({ operation, height }: Drawn['openings'][number]): number {
  const leaf = [5, 7.5, 10].findIndex((most) => height <= most) + 2;
  if (operation === 'double') return 2 * leaf;
  return operation === 'swing' ? leaf : 0;
}

/** Cubic feet of joint in a square foot: the cell of a piece and its half joints, less the piece. */
function jointsIn(option: Fields): number {
  const { length, width, joint } = groupOf(option['attributes']);
  const [long, wide, gap] = [feetOf(length), feetOf(width), feetOf(joint)];
  const cell = (long + gap) * (wide + gap);
  return ((cell - long * wide) / cell) * feetOf(option['thickness']);
}

/** Corners that stick out into the room, as high as the lower of both walls, and three sides of passages without casing. */
function cornersOf(choice: Choice): number {
  const { room } = choice;
  const walls = placesOf(choice);
  const turns = room.sides.map((side, index) => {
    const next = room.sides[(index + 1) % room.sides.length] as Side;
    const isOut = cross(side, next) > within && side.openTo === undefined && next.openTo === undefined;
    if (!isOut || !walls.includes(side.name)) return 0;
    return Math.min(heightAt(room, spotAt(side, side.run, 0)), heightAt(room, spotAt(next, 0, 0)));
  });
  const passages = room.openings.filter(({ kind, wall }) => kind === 'open' && walls.includes(wall));
  return sum([...turns, ...passages.map(({ width, height, sill }) => 2 * height + (sill === 0 ? 1 : 2) * width)]);
}

/** Clockwise walks turn right at corners of the room, left at those that stick out. */
function cross(side: Side, next: Side): number {
  const [a, b] = [side, next].map(({ from, to, run }) => ({ x: (to.x - from.x) / run, y: (to.y - from.y) / run }));
  return a && b ? a.x * b.y - a.y * b.x : 0;
}
