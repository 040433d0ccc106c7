import type { Option, PriceList, Source } from '../../core/model/index.js';
import { setKeys, type SetKeys } from '../../core/records/index.js';
import { printDay } from '../../base/units/index.js';
import type { ChangedOption, ListDifference } from './differ.js';
import { newOption, type Quotation } from './new-option.js';

interface WriteWish {
  readonly list: PriceList;
  /** Records as they lie on disk. */
  readonly sources: readonly Source[];
  /** Where new options go: `content`, or a shared folder. */
  readonly root: string;
  readonly quoted: Quotation;
  /** Mark what is gone as withdrawn. */
  readonly withdraw: boolean;
}

/** The records that a list changes, and the new ones, as they are to be written. Every byte outside what the list says stays. */
export function writeList({ added, changed, confirmed, gone }: ListDifference, wish: WriteWish): readonly Source[] {
  const { list, sources, root, quoted, withdraw } = wish;
  const texts = new Map(sources.map(({ path, text }) => [path, text]));
  const rewrite = ({ origin: { file } }: Option, sets: readonly SetKeys[]): readonly Source[] => {
    const text = texts.get(file);
    return text === undefined || sets.length === 0 ? [] : [{ path: file, text: setKeys(text, sets) }];
  };
  return [
    ...added.map((product) => newOption(product, list, { root, quoted })),
    ...[...changed, ...confirmed].flatMap((one) =>
      rewrite(one.option, [...valueSets(one), ...quotedSets(one.option, quoted)]),
    ),
    ...(withdraw ? gone.flatMap((option) => rewrite(option, [withdrawnSet(list, quoted)])) : []),
  ];
}

const afterPrice = ['quoted', 'waste', 'pack', 'price'];

function valueSets({ option, product, price, pack, lead, attributes }: ChangedOption): readonly SetKeys[] {
  const hasPack = option.parts[0]?.pack !== undefined;
  const values = Object.fromEntries(attributes.map((name) => [name, product.attributes[name]]));
  const hasAttributes = Object.keys(option.attributes).length > 0;
  return [
    ...(price ? [{ in: ['price'], values: { material: product.material }, after: [] }] : []),
    ...(pack && hasPack ? [{ in: ['pack'], values: { holds: product.pack?.holds }, after: ['name'] }] : []),
    ...(pack && !hasPack ? [{ in: [], values: { pack: product.pack }, after: ['price'] }] : []),
    ...(lead ? [{ in: [], values: { lead: product.lead }, after: afterPrice }] : []),
    ...(attributes.length > 0 && hasAttributes ? [{ in: ['attributes'], values, after: [] }] : []),
    ...(attributes.length > 0 && !hasAttributes ? [{ in: [], values: { attributes: values }, after: ['lead'] }] : []),
  ];
}

/** A last day of an older quotation goes with it. */
function quotedSets({ quoted: was }: Option, quoted: Quotation): readonly SetKeys[] {
  if (was && was.on === quoted.on && was.by === quoted.by && was.until === quoted.until) return [];
  const inPlace = was && (was.until === undefined || quoted.until !== undefined);
  if (inPlace) return [{ in: ['quoted'], values: { ...quoted }, after: ['by', 'on'] }];
  return [{ in: [], values: { quoted: { ...quoted } }, after: ['waste', 'pack', 'price'] }];
}

function withdrawnSet({ name }: PriceList, { on }: Quotation): SetKeys {
  const why = `No longer in the price list of ${name} of ${printDay(on)}.`;
  return { in: [], values: { withdrawn: { on, why } }, after: ['lead', ...afterPrice] };
}
