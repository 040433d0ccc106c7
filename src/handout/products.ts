import type { BookOption } from '../core/book/index.js';
import { sampleFacts } from '../draw/index.js';
import { moneyWords, sieve, sieveName } from './sieve.js';
import type { HandoutNeed, HandoutProduct } from './handout.js';
import { cleared } from './cleared.js';
import { onlyTrades } from '../core/records/index.js';
import { length, own, told, weightPer, type Said } from './own.js';
import { weightInPlace } from '../core/takeoff/index.js';
import { sectionOf } from './sections.js';
import type { Work } from './work.js';
import { leadText, milestoneOf, refTo, packText, productFinish, roomNumbers } from './words.js';

/** Full product data of all that a trade sets, each product once. */
export function products(work: Work): readonly HandoutProduct[] {
  return [...work.products.values()].map((option) => {
    const at = work.ownOf(option.id);
    const finish = productFinish(option, !at.every(({ state }) => state === 'open'), work.keys);
    const rooms = at.map(({ room }) => room);
    return {
      id: refTo(option.id),
      ...(finish.key !== undefined && { key: finish.key }),
      category: sieveName(work.look.categoryName(option.category)),
      section: sectionOf(option, work),
      name: finish.name,
      ...(option.maker !== undefined && { maker: sieveName(option.maker) }),
      ...(option.model !== undefined && { model: sieveName(option.model) }),
      ...(option.summary !== undefined && { summary: sieve(option.summary) }),
      attributes: attributesOf(option),
      ...thickness(option),
      ...weightOf(option),
      packs: option.parts.flatMap(({ part, pack, unit }) =>
        pack ? [{ part: sieveName(part === 'main' ? '' : part), text: packText(pack, unit) }] : [],
      ),
      lead: leadText(option.leadDays),
      needs: needsOf(option, work).filter(({ by }) => by !== work.trade.name),
      rooms: roomNumbers(rooms, work.look).map(sieveName),
      finish,
      ...(option.swatch && { swatch: cleared(option.swatch) }),
      sample: cleared(sampleFacts(option)),
      notes: sieve(onlyTrades(option.body)),
    };
  });
}

/** The category's attributes; yes-no ones say yes or no. One whose label speaks of money is left out with its value. */
function attributesOf(option: BookOption): HandoutProduct['attributes'] {
  return option.attributes.flatMap(({ label, attribute }) => {
    const said = valueOf(attribute);
    return said === '' || moneyWords(label) !== undefined ? [] : [{ label: sieveName(label), text: said }];
  });
}

/** A bare number is what its label says: the sieve, which does not read the label, would take `3.75` for a sum. */
function valueOf({ value, text }: BookOption['attributes'][number]['attribute']): Said {
  if (value.kind === 'yes-no') return value.yes ? own('yes') : own('no');
  if (value.kind === 'number' && text === String(value.number)) return told`${value.number}`;
  return sieve(text);
}

function weightOf(option: BookOption): Pick<HandoutProduct, 'weight'> {
  const inPlace = weightInPlace(option);
  if (!option.weight || !inPlace) return {};
  const own = weightPer(option.weight);
  return {
    weight: inPlace.pounds === inPlace.product ? own : told`${own}, ${weightPer(inPlace)} with what it is set in`,
  };
}

function thickness(option: BookOption): Pick<HandoutProduct, 'thickness'> {
  const said = option.attributes.some(({ name }) => name.includes('thickness'));
  return option.thickness === undefined || said ? {} : { thickness: length(option.thickness) };
}

export function needsOf(option: BookOption, { look }: Work): readonly HandoutNeed[] {
  return option.needs.flatMap(({ what, by, before }) => {
    const said = sieve(what);
    const { name, date } = milestoneOf(before, look);
    return said === '' ? [] : [{ what: said, by: sieveName(look.tradeName(by)), before: name, ...(date && { date }) }];
  });
}
