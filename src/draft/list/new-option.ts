import type { PriceList, Source } from '../../core/model/index.js';
import { parseRate, type IsoDate } from '../../base/units/index.js';
import { recordText } from '../record/text.js';
import type { ListProblem } from './list-problem.js';
import type { Product } from './product.js';

/** Where a price comes from, as an option's record says it. */
export interface Quotation {
  readonly on: IsoDate;
  readonly by: string;
  readonly until?: IsoDate;
}

/** The record of a new option: what the list and its record tell. What is missing beside is asked for when it is chosen. */
export function newOption(
  product: Product,
  { fixed, category }: PriceList,
  { root, quoted }: { readonly root: string; readonly quoted: Quotation },
): Source {
  const { pack, material, slug } = product;
  const lead = product.lead ?? fixed.lead;
  const attributes = { ...fixed.attributes, ...product.attributes };
  const maker = product.maker ?? fixed.maker;
  const record = {
    name: product.name,
    ...(maker !== undefined && { maker }),
    ...(product.number !== undefined && { model: product.number }),
    price: { material, ...(fixed.labor !== undefined && { labor: fixed.labor }) },
    ...(pack && { pack }),
    ...(fixed.waste !== undefined && { waste: fixed.waste }),
    quoted,
    ...(lead !== undefined && { lead }),
    ...(Object.keys(attributes).length > 0 && { attributes }),
  };
  return { path: `${root}/options/${category}/${slug}.md`, text: recordText(record) };
}

/** What a new option must say, and neither the list nor its record does: what installing it costs, for the list's own unit. */
export function lacking(products: readonly Product[], { fixed, slug }: PriceList): readonly ListProblem[] {
  const record = `content/price-lists/${slug}.md`;
  const labor = fixed.labor === undefined ? undefined : parseRate(fixed.labor);
  if (!labor) {
    const [first] = products;
    const fix = `write fixed.labor in ${record}`;
    return first ? [isNew(first, 'nothing says what its installation costs', fix)] : [];
  }
  const other = products.find(({ material }) => {
    const rate = parseRate(material);
    return labor.ok && rate.ok && rate.value.unit !== labor.value.unit;
  });
  if (!other) return [];
  return [
    isNew(
      other,
      `is priced for another unit than fixed.labor, ${fixed.labor ?? ''}`,
      `keep what is for another unit in a price list of its own, or name the row under leave-out in ${record}`,
    ),
  ];
}

function isNew({ row, name }: Product, what: string, fix: string): ListProblem {
  return { row, what: `${name} is new, and ${what}`, fix, severity: 'error' };
}
