import type { BookOption } from '../book/index.js';
import type { OptionPart } from '../model/index.js';
import {
  notToldYet,
  printDays,
  printLength,
  printMoney,
  printRate,
  printWeightPer,
  notPricedYet,
} from '../../base/units/index.js';
import { compareText } from './compare-text.js';
import type { OptionChange } from './comparison.js';
import type { FieldChange } from './room-change.js';
import type { Pair } from './match.js';

/** What the price book changed about one option, or undefined when nothing that decides cost, time or fit did. */
export function compareOptions({ from, to }: Pair<BookOption>): OptionChange | undefined {
  if (!from) return to && { option: to.id, name: to.name, kind: 'added', fields: [] };
  if (!to) return { option: from.id, name: from.name, kind: 'removed', fields: [] };
  const fields = [...scalarFields(from, to), ...partFields(from, to), ...attributeFields(from, to)];
  const renamed = from.id !== to.id;
  if (fields.length === 0 && !renamed) return undefined;
  const name = { option: to.id, name: to.name, fields };
  return renamed ? { ...name, kind: 'renamed', renamedFrom: from.id } : { ...name, kind: 'changed' };
}

function scalarFields(from: BookOption, to: BookOption): FieldChange[] {
  return compareText([
    ['name', from.name, to.name],
    ['maker', from.maker ?? notToldYet, to.maker ?? notToldYet],
    ['model', from.model ?? notToldYet, to.model ?? notToldYet],
    ['freight', printMoney(from.freight), printMoney(to.freight)],
    ['lead time', leadText(from), leadText(to)],
    ['weight', weightText(from), weightText(to)],
    ['thickness', thicknessText(from), thicknessText(to)],
    ['needs', needsText(from), needsText(to)],
    ...reworded(from, to),
  ]);
}

function leadText({ leadDays }: BookOption): string {
  return leadDays === undefined ? notToldYet : printDays(leadDays);
}

function weightText({ weight }: BookOption): string {
  return weight ? printWeightPer(weight) : 'not given';
}

function thicknessText({ thickness }: BookOption): string {
  return thickness === undefined ? 'not given' : printLength(thickness);
}

function needsText({ needs }: BookOption): string {
  return needs.map(({ what, by, before }) => `${what}, by ${by}, before ${before}`).join('; ') || 'nothing';
}

/** Prose is too long to set beside prose in a table: the record's text shows it. */
function reworded(from: BookOption, to: BookOption): (readonly [string, string, string])[] {
  const prose: (readonly [string, unknown, unknown])[] = [
    ['specification', from.specification, to.specification],
    ['care', from.care, to.care],
    ['sample drawn', from.swatch, to.swatch],
    ['photograph', from.photo, to.photo],
  ];
  return prose
    .filter(([, a, b]) => JSON.stringify(a) !== JSON.stringify(b))
    .map(([field]) => [field, 'as before', 'changed, see the record'] as const);
}

function partFields(from: BookOption, to: BookOption): FieldChange[] {
  const names = [...new Set([...from.parts, ...to.parts].map((part) => part.part))];
  return names.flatMap((name) => {
    const before = from.parts.find((part) => part.part === name);
    const after = to.parts.find((part) => part.part === name);
    const of = name === 'main' ? '' : ` of ${name}`;
    const rate = (part: OptionPart | undefined, kind: 'material' | 'labor'): string => {
      if (!part) return 'not sold';
      const price = part[kind];
      return price ? printRate({ rate: price, unit: part.unit }) : notPricedYet;
    };
    return compareText([
      [`material${of}`, rate(before, 'material'), rate(after, 'material')],
      [`labor${of}`, rate(before, 'labor'), rate(after, 'labor')],
      [`pack${of}`, packText(before), packText(after)],
      [`waste${of}`, wasteText(before), wasteText(after)],
    ]);
  });
}

function packText(part: OptionPart | undefined): string {
  return part?.pack ? `${part.pack.name} of ${part.pack.holds}` : 'none';
}

function wasteText(part: OptionPart | undefined): string {
  return part ? `${(part.waste.amount * 100) / 10 ** part.waste.scale} %` : 'none';
}

function attributeFields(from: BookOption, to: BookOption): FieldChange[] {
  const text = (option: BookOption, name: string) =>
    option.attributes.find((each) => each.name === name)?.attribute.text ?? 'not given';
  const names = new Map([...from.attributes, ...to.attributes].map((each) => [each.name, each.label]));
  return compareText([...names].map(([name, label]) => [label, text(from, name), text(to, name)]));
}
