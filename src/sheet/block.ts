import type { HouseCell, Sieved, TradeCell } from './cell.js';
import type { TableBlock } from './table.js';

type Made<Name extends string, Holds> = { readonly block: Name } & Readonly<Holds>;

/** What sheets are made of. Closed: a writer that forgets one does not compile. What a page alone has stays a component of that
 *  page, around blocks. */
export type Block<C extends HouseCell = HouseCell, Words extends string = string> =
  | Made<'section', { id: string; title: Words; of: readonly Block<C, Words>[]; folded?: boolean }>
  /** Cells in one running line. */
  | Made<'prose', { of: readonly C[]; tone: 'lead' | 'plain' | 'small' }>
  | Made<'facts', { facts: readonly { readonly label: Words; readonly cell: C }[] }>
  | TableBlock<C, Words>
  /** A record's body: Markdown. */
  | Made<'body', { text: Words }>
  | Made<'list', { ordered: boolean; items: readonly (readonly C[])[] }>
  /** Something to weigh: a title with its place, what was seen, what to do. */
  | Made<'note', { id: string; tone: 'caution' | 'aside'; title: readonly C[]; of: readonly (readonly C[])[] }>;

/** One sheet: what a page, a part of the printed book or a handout says. */
export interface Sheet<C extends HouseCell = HouseCell, Words extends string = string> {
  readonly format: 'bookmatch/sheet/1';
  readonly id: string;
  readonly title: Words;
  readonly paper: 'portrait' | 'landscape';
  readonly blocks: readonly Block<C, Words>[];
}

export type HouseSheet = Sheet;
export type TradeSheet = Sheet<TradeCell, Sieved>;

/** Every section of a sheet, also those within others. */
export function sectionsOf(blocks: readonly Block[]): readonly Extract<Block, { block: 'section' }>[] {
  return blocks.flatMap((block) => (block.block === 'section' ? [block, ...sectionsOf(block.of)] : []));
}

/** Every table of a sheet, in order. */
export function tablesOf<C extends HouseCell, Words extends string>(
  blocks: readonly Block<C, Words>[],
): readonly TableBlock<C, Words>[] {
  return blocks.flatMap((block) =>
    block.block === 'table' ? [block] : block.block === 'section' ? tablesOf(block.of) : [],
  );
}
