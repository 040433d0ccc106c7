import type { LookUp } from '../core/book/index.js';
import {
  layOut,
  layOutFor,
  type Cell,
  type Gate,
  type HouseBlock,
  type HouseTable,
  type MoneyFree,
  type Table,
  type TableBlock,
} from '../sheet/index.js';
import { namesOf } from './names-of.js';

/** A table with where its rows come from, as the house reads it. */
export interface HouseSchedule {
  readonly id: string;
  readonly lay: (look: LookUp) => HouseBlock;
}

/** One that a trade may read too. */
export interface Schedule extends HouseSchedule {
  /** As a trade reads it: its own rows where rows are of one trade, words through the gate. */
  readonly layFor: <Words extends string>(
    look: LookUp,
    trade: string,
    gate: Gate<Words>,
  ) => TableBlock<Cell<Words>, Words>;
}

/** Joins a table that holds no money with its rows: all of them, or what a trade reads of them. `trades` says whose row it is;
 *  without it every trade that asks for the schedule gets each row. */
export function schedule<Row>(of: {
  readonly table: Table<MoneyFree<Row>>;
  readonly rows: (look: LookUp, trade?: string) => readonly MoneyFree<Row>[];
  readonly trades?: (row: MoneyFree<Row>) => readonly string[];
}): Schedule {
  const { table, rows, trades } = of;
  return {
    id: table.id,
    lay: (look) => layOut(table, rows(look), namesOf(look)),
    layFor: (look, trade, gate) => {
      const own = rows(look, trade).filter((row) => trades === undefined || trades(row).includes(trade));
      return layOutFor(table, own, namesOf(look), gate);
    },
  };
}

/** Joins a table with its rows where they hold money: there is no way from it to a trade. */
export function houseSchedule<Row>(table: HouseTable<Row>, rows: (look: LookUp) => readonly Row[]): HouseSchedule {
  return { id: table.id, lay: (look) => layOut(table, rows(look), namesOf(look)) };
}
