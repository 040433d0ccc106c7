/** The tables of a handout, beside those of the house. */
import type { LookUp } from '../../src/core/book/index.js';
import type { Handout } from '../../src/handout/index.js';
import { sieve } from '../../src/handout/sieve.js';
import { raw, rowsOf, type HouseBlock, type HouseCell, type TradeBlock } from '../../src/sheet/index.js';
import { backing, orders, supplies, tradeTables } from '../../src/table/index.js';

/** Every table that stands in a handout; an empty one is said in words. */
export function tradeTablesOf(handout: Handout): readonly TradeBlock[] {
  const { steps, leftForYou, leftByYou, orders: bought, supplies: used, schedules } = handout;
  return [steps, leftForYou, leftByYou, bought, used, ...schedules].filter(({ groups }) => groups.length > 0);
}

/** The handout with its tables alone, each of them cut. */
export function cutForPrint(handout: Handout, cut: (table: TradeBlock) => TradeBlock): Handout {
  const { steps, leftForYou, leftByYou, orders: bought, supplies: used, schedules } = handout;
  return {
    ...handout,
    steps: cut(steps),
    leftForYou: cut(leftForYou),
    leftByYou: cut(leftByYou),
    orders: cut(bought),
    supplies: cut(used),
    schedules: schedules.map(cut),
    rooms: [],
    products: [],
    sections: [],
    questions: [],
    cautions: [],
  };
}

/** What a handout's table says otherwise than the house's of the same rows: `table/column at row`. */
export function tradeDifferences(handout: Handout, look: LookUp): readonly string[] {
  const wrong = tradeTablesOf(handout).flatMap((table) => {
    const house = houseTable(table.id, look);
    // Steps are of the trade alone.
    return house ? compared(table, house) : [];
  });
  return [...wrong, ...unexplained(handout)];
}

function houseTable(id: string, look: LookUp): HouseBlock | undefined {
  if (id === 'orders') return orders.lay(look);
  if (id === 'supplies') return supplies.lay(look);
  if (id === 'left-for-you' || id === 'left-by-you') return backing.lay(look);
  return Object.values(tradeTables)
    .find((schedule) => schedule.id === id)
    ?.lay(look);
}

function compared(table: TradeBlock, house: HouseBlock): readonly string[] {
  const rows = new Map(rowsOf(house).map((row) => [String(row.id), row.cells]));
  const columns = house.columns.filter(({ kind }) => kind !== 'money').map(({ key }) => key);
  const same = JSON.stringify(table.columns.map(({ key }) => key)) === JSON.stringify(columns);
  return [
    ...(same ? [] : [`${table.id}: other columns`]),
    ...rowsOf(table).flatMap(({ id, cells }) => {
      const own = rows.get(id);
      if (!own) return [`${table.id}: a row of its own, ${id}`];
      return columns
        .filter((key) => !isSame(cells[key], own[key], `${table.id}/${key}`))
        .map((key) => `${table.id}/${key} at ${id}`);
    }),
  ];
}

/** Columns in which a trade reads a part of what the house reads. */
const partly: readonly string[] = ['finish/remarks'];

/** The same value, or what the sieve leaves of it. */
function isSame(cell: HouseCell | undefined, house: HouseCell | undefined, column: string): boolean {
  const [said, all] = [String(raw(cell)), String(raw(house))];
  if (said === all) return true;
  if (partly.includes(column)) return said.split(', ').every((one) => one === '' || all.split(', ').includes(one));
  return said !== all && sieve(all) !== all && said === sieve(all);
}

/** Numbers of remarks in the finish schedule that the list of remarks does not explain, and those that no room asks for. */
function unexplained({ schedules }: Handout): readonly string[] {
  const rows = (id: string) => schedules.filter((table) => table.id === id).flatMap((table) => rowsOf(table));
  const asked = rows('finish')
    .flatMap(({ cells }) => String(raw(cells['remarks'])).split(', '))
    .filter((one) => one !== '');
  const told = rows('finish-remarks').map(({ id }) => String(id));
  return [
    ...asked.filter((one) => !told.includes(one)).map((one) => `remark ${one} is not explained`),
    ...told.filter((one) => !asked.includes(one)).map((one) => `remark ${one} stands in no room`),
  ];
}
