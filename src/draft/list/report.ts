import type { Option, PriceList } from '../../core/model/index.js';
import { counted, joinWords, printDay } from '../../base/units/index.js';
import { printable } from '../../base/problem/index.js';
import type { ChangedOption, ListDifference } from './differ.js';
import type { Quotation } from './new-option.js';
import type { Product, Products } from './product.js';

interface Told {
  readonly file: string;
  readonly list: PriceList;
  /** `content`, or the shared folder that the options are of. */
  readonly root: string;
  readonly quoted: Quotation;
  readonly withdraw: boolean;
  /** By slug, the rooms where it was ordered. */
  readonly ordered: ReadonlyMap<string, readonly string[]>;
}

/** What a list would change, to be read before it is written. */
export function reportList(products: Products, difference: ListDifference, told: Told): string {
  const { list, file, quoted } = told;
  const { added, changed, confirmed, gone, ordered, inParts, back } = difference;
  const read = counted(products.products.length, 'product');
  const until = quoted.until === undefined ? '' : `, good until ${printDay(quoted.until)}`;
  const omitted = [
    ...(products.leftOut.size > 0 ? [`${counted(products.leftOut.size, 'row')} left out by its record`] : []),
    ...(products.headings > 0 ? [`${counted(products.headings, 'row')} with one cell passed over`] : []),
  ];
  const lines = [
    `${list.name}: ${read} of ${list.category} in ${file}, prices of ${printDay(quoted.on)}${until}`,
    ...(omitted.length > 0 ? [`${joinWords(omitted)}.`] : []),
    ...section(
      'New',
      added.flatMap((product) => newLines(product, list, told.root)),
    ),
    ...section('Changed', changed.flatMap(changedLines)),
    ...section(
      'Ordered, so that their records keep the price of the order',
      ordered.flatMap((one) => [
        ...changedLines(one),
        `    ordered for ${joinWords(told.ordered.get(one.option.slug) ?? [])}`,
      ]),
    ),
    ...(ordered.length > 0
      ? [
          '  What is not ordered yet and would be bought at the new price needs an option of its own, or the last invoice of the order.',
        ]
      : []),
    ...section('Bought in parts, whose prices no list of this form tells: write them by hand', inParts.map(named)),
    ...section('Withdrawn by their records, and in the list', back.map(named)),
    ...section(
      told.withdraw ? 'Gone, to be marked as withdrawn' : 'Gone from the list: --withdraw marks them as withdrawn',
      gone.map(named),
    ),
    ...(confirmed.length > 0 ? ['', `At the same price as before: ${confirmed.length}`] : []),
  ];
  return `${lines.map(printable).join('\n')}\n`;
}

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ['', title, ...lines];
}

function named({ name, origin }: Option): string {
  return `  ${name}  ${origin.file}`;
}

function newLines(
  { name, material, slug, pack, lead }: Product,
  { category }: PriceList,
  root: string,
): readonly string[] {
  const more = [material, ...(pack ? [`${pack.name} of ${pack.holds}`] : []), ...(lead === undefined ? [] : [lead])];
  return [`  ${name}  ${root}/options/${category}/${slug}.md`, `    ${more.join(', ')}`];
}

function changedLines({ option, differences }: ChangedOption): readonly string[] {
  return [named(option), ...differences.map(({ what, from, to }) => `    ${what}  ${from} → ${to}`)];
}
