import type { BookOption } from '../book/index.js';
import type { HandoutNeed, HandoutOrder, HandoutProduct, HandoutSupply } from './handout.js';
import { printAmount, printLength } from '../units/index.js';
import { countsWords } from '../takeoff/index.js';
import { onlyTrades } from './marks.js';
import { sieve } from './sieve.js';
import { optionsAt } from './work.js';
import type { Work } from './work.js';
import { leadText, milestoneOf, packText, roomNumbers } from './words.js';

/** Full product data of all that a trade sets, each product once. */
export function products(work: Work): readonly HandoutProduct[] {
  return [...work.products.values()].map(({ key, option }) => {
    const at = work.selections.filter((selection) => optionsAt(selection).includes(option.id));
    return {
      key,
      category: work.look.categoryName(option.category),
      section: work.look.category(option.category)?.section ?? '',
      name: option.name,
      maker: option.maker,
      model: option.model,
      summary: sieve(option.summary),
      attributes: attributesOf(option),
      ...thickness(option),
      ...(option.weight && { weight: `${printAmount(option.weight.pounds, 2)} lb / ${option.weight.per}` }),
      packs: option.parts.flatMap(({ part, pack, unit }) =>
        pack
          ? [{ part: part === 'main' ? '' : part, text: `${pack.name} of ${printAmount(pack.holds, 2)} ${unit}` }]
          : [],
      ),
      lead: leadText(option.leadDays),
      needs: needsOf(option, work).filter(({ by }) => by !== work.trade.name),
      rooms: roomNumbers(
        at.map(({ room }) => room),
        work.look,
      ),
      standing: at.every(({ state }) => state === 'open') ? 'considered' : 'decided',
      swatch: option.swatch,
      notes: sieve(onlyTrades(option.body)),
    };
  });
}

/** The category's attributes; yes-no ones say yes or no. */
function attributesOf(option: BookOption): HandoutProduct['attributes'] {
  return option.attributes.flatMap(({ label, attribute: { value, text } }) => {
    const said = value.kind === 'yes-no' ? (value.yes ? 'yes' : 'no') : sieve(text);
    return said === '' ? [] : [{ label, text: said }];
  });
}

function thickness(option: BookOption): { readonly thickness?: string } {
  const said = option.attributes.some(({ name }) => name.includes('thickness'));
  return option.thickness === undefined || said ? {} : { thickness: printLength(option.thickness) };
}

export function needsOf(option: BookOption, { look }: Work): readonly HandoutNeed[] {
  return option.needs.flatMap(({ what, by, before }) => {
    const said = sieve(what);
    const { name, date } = milestoneOf(before, look);
    return said === '' ? [] : [{ what: said, by: look.tradeName(by), before: name, ...(date && { date }) }];
  });
}

/** What the house orders for the trade. Packs are pooled over all rooms. */
export function orders(work: Work): readonly HandoutOrder[] {
  const { look, trade } = work;
  const sequence = new Map([...work.products.keys()].map((id, index) => [id, index]));
  return look.book.orders
    .filter((order) => order.trade === trade.slug)
    .toSorted((a, b) => (sequence.get(a.option) ?? 0) - (sequence.get(b.option) ?? 0))
    .flatMap((order) => {
      const product = work.products.get(order.option);
      if (!product) return [];
      const { option, key } = product;
      const { part, unit, net, required, pack, packs, ordered, stock, counts = [], supply } = order;
      const rooms = order.shares.flatMap(({ selection }) => look.selection(selection)?.room ?? []);
      return [
        {
          product: key,
          name: option.name,
          part: part === 'main' ? '' : part,
          unit,
          net,
          required,
          order: pack ? packText(packs, pack, unit) : `${printAmount(ordered, 1)} ${unit}`,
          stock: pieces(stock),
          counts: countsWords(counts),
          rooms: roomNumbers(rooms, look),
          lead: leadText(option.leadDays),
          supply: supply === 'owner-furnished' ? 'The owner furnishes' : 'You supply',
        },
      ];
    });
}

/** What is used up with them, pooled for the house. */
export function supplies({ look, trade }: Work): readonly HandoutSupply[] {
  return look.book.supplies
    .filter((supply) => supply.trade === trade.slug)
    .flatMap(({ what, unit, net, required, pack, packs = 0, shares }) => {
      const said = sieve(what);
      if (said === '') return [];
      const rooms = shares.flatMap(({ selection }) => look.selection(selection)?.room ?? []);
      const order = pack ? packText(packs, pack, unit) : `${printAmount(required, 1)} ${unit}`;
      return [{ what: said, unit, net, required, order, rooms: roomNumbers(rooms, look) }];
    });
}

/** `18 at 12'-0", 24 at 16'-0"`. */
export function pieces(
  stock: readonly { readonly length: Parameters<typeof printLength>[0]; readonly count: number }[],
): string {
  return stock.map(({ length, count }) => `${count} at ${printLength(length)}`).join(', ');
}
