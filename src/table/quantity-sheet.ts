import { lower } from '../base/units/index.js';
import type { BookTrade, LookUp } from '../core/book/index.js';
import { words, type Block, type HouseBlock, type Sheet } from '../sheet/index.js';
import { isFilled } from './part.js';
import { quantities, quantitiesOfTrade, used } from './quantities.js';
import { resistance } from './resistance.js';
import { suppliesOfTrade } from './supplies.js';
import { quantityLines } from './takeoff-lines.js';

/** What each trade measures and installs, with the rule beside every number. */
export function quantitySheet(look: LookUp): Sheet {
  return {
    format: 'bookmatch/sheet/1',
    id: 'quantities',
    title: 'Quantities by trade',
    paper: 'landscape',
    blocks: [
      lead,
      ...look.book.trades.flatMap((trade): Block[] => {
        const tables = tablesOf(trade, look);
        if (tables.length === 0) return [];
        return [{ block: 'section', id: `trade-${trade.slug}`, title: trade.name, of: [...scopeOf(trade), ...tables] }];
      }),
    ],
  };
}

/** The same of one trade, as a page of its own. */
export function tradeSheet(trade: BookTrade, look: LookUp): Sheet {
  const tables = tablesOf(trade, look);
  return {
    format: 'bookmatch/sheet/1',
    id: `quantities-of-${trade.slug}`,
    title: `Quantities of ${lower(trade.name)}`,
    paper: 'landscape',
    blocks: [tables.length > 0 ? lead : nothing, ...scopeOf(trade), ...tables],
  };
}

const said = (text: string): Block => ({ block: 'prose', tone: 'lead', of: [words(text)] });

const lead = said('Net is what is covered; then come coats and waste. The installer confirms on site before ordering.');

const nothing = said('Nothing is measured for this trade yet.');

function tablesOf({ slug }: BookTrade, look: LookUp): readonly HouseBlock[] {
  const own = quantityLines(
    look,
    look.book.selections.filter(({ trade }) => trade === slug),
  );
  if (own.length === 0) return [];
  return [quantitiesOfTrade(slug, own, look), suppliesOfTrade(slug, look), resistance(slug, own, look)].filter(
    isFilled,
  );
}

/** The same as data, with what is used up at each place. */
export const quantityTables = (look: LookUp): readonly HouseBlock[] =>
  [quantities.lay(look), used.lay(look)].filter(isFilled);

/** What the trade must know, does, and leaves to others, as its record says. */
function scopeOf({ slug, contact, sections, needsToKnow, scopeIn, scopeOut, body }: BookTrade): readonly Block[] {
  const lists = [
    { id: 'know', title: 'Needs to know', lines: needsToKnow },
    { id: 'does', title: 'Does', lines: scopeIn },
    { id: 'leaves', title: 'Leaves to others', lines: scopeOut },
  ].filter(({ lines }) => lines.length > 0);
  const numbers = sections.length > 0 ? ` Sections ${sections.join(', ')}.` : '';
  const head: Block = { block: 'prose', tone: 'small', of: [words(`${contact}.${numbers}`)] };
  if (lists.length === 0) return [head];
  const of = lists.map(({ id, title, lines }): Block => {
    const items = lines.map((text) => [{ is: 'prose' as const, text }]);
    return { block: 'section', id: `${slug}-${id}`, title, of: [{ block: 'list', ordered: false, items }] };
  });
  const text: Block[] = body.trim() === '' ? [] : [{ block: 'body', text: body }];
  const title = 'What this trade needs to know, does, and leaves to others';
  return [head, { block: 'section', id: `${slug}-scope`, title, folded: true, of: [...of, ...text] }];
}
