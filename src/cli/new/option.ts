import type { Command } from 'commander';
import type { AttributeRule, Category, Records, Source } from '../../core/model/index.js';
import { slugOfPath } from '../../core/records/index.js';
import { didYouMean } from '../../base/problem/index.js';
import {
  capital,
  counted,
  parseDays,
  unitName,
  withSign,
  type Reading,
  type Unit,
  read,
} from '../../base/units/index.js';
import { draftOption, freshSlug, pricedParts, readAttribute, readName, readPrice } from '../../draft/index.js';
import { categoryNamed } from '../category-named.js';
import { typed, type Console } from '../console.js';
import { consider, roomsNamed } from '../consider.js';
import { eachGiven } from '../each-given.js';
import { UsageError } from '../usage-error.js';
import { addingCommand, addRecords, openToAdd, type Adding } from './add-records.js';
import { keysGiven, withKeyFlags } from './key-flags.js';
import { readSigned } from './signed-amount.js';
import { take, valueOf, type Wanted } from './take.js';

interface OptionFlags {
  readonly house: string;
  readonly name?: string;
  readonly price: readonly string[];
  readonly labor: readonly string[];
  readonly lead?: string;
  readonly set: readonly string[];
  readonly for?: readonly string[];
}

/** Keys that are said by a flag or a question of their own. */
const own: readonly string[] = ['name', 'lead'];

/** `bookmatch new option floor`: a finish that can be chosen, of as little as a record needs. */
export function newOption(console: Console, done: (code: number) => void): Command {
  const command = addingCommand('option')
    .description(
      'a finish that can be chosen: its name and price; more by --set and --lead, else its outputs ask for it when they need it',
    )
    .argument('<category>', 'its category, by its file name, such as floor')
    .option('--name <name>', 'name as printed')
    .option(
      '--price <price>',
      "material, such as '$6.50 / sq ft'; PART=PRICE for each part of what is bought in parts",
      eachGiven,
      [],
    )
    .option('--labor <price>', 'installation, in the same way; absent: not priced yet', eachGiven, [])
    .option('--lead <days>', 'time from order to site, such as "4 weeks"')
    .option('--set <key=value>', 'what the category asks of its options; again for each', eachGiven, [])
    .option('--for <room>', 'consider it in this room, by its file name, or in all; again for each', eachGiven);
  return withKeyFlags(command, 'option', own).action(async (slug: string, flags: OptionFlags) => {
    const keys = keysGiven('option', own, { ...flags });
    const adding = await openToAdd(flags.house, 'option', console);
    if (!adding) return done(1);
    const category = categoryNamed(slug, adding.records);
    const rooms = roomsNamed(flags.for, adding.records);
    const wanted = wantedOf(category, flags, console);
    const asker = console.asker();
    const said = await take(wanted, asker);
    const open = openRooms(category, adding.records);
    const everywhere = rooms ?? (asker && open.length > 0 ? await whereConsidered(open.length, asker) : []);
    const taken = new Set(
      adding.records.options.filter((option) => option.category === slug).map((option) => option.slug),
    );
    const name = valueOf(readName(said['name'] ?? ''));
    const answers = {
      slug: freshSlug(name, taken, `option-${taken.size + 1}`),
      name,
      prices: pricesOf(category, said),
      ...(said['lead'] !== undefined && { lead: said['lead'] }),
      attributes: attributesOf(category, said),
    };
    const drafted = draftOption(slug, { ...answers, keys });
    const tried = tryDrafted(drafted, adding);
    const option = tried.isQuotedByCategory
      ? draftOption(slug, { ...answers, keys: { ...keys, quoted: 'none' } })
      : drafted;
    const considered = consider([slugOfPath(option.path)], category.slug, everywhere, adding.records);
    if (!(await addRecords(adding, [option, ...considered], console))) return done(1);
    console.tell(
      told(option, considered, category, flags.for !== undefined, tried.lacks, console) +
        typed(`\n  bookmatch check${adding.house}\n  bookmatch new option ${category.slug}${adding.house}\n`, console),
    );
    done(0);
  });
}

function wantedOf(
  category: Category,
  flags: OptionFlags,
  { takesCommands }: Pick<Console, 'takesCommands'>,
): Readonly<Record<string, Wanted>> {
  const parts = pricedParts(category);
  const set = pairsOf(
    flags.set,
    '--set',
    category.attributes.map(({ name }) => name),
  );
  const [prices, labors] = [byPart(flags.price, '--price', parts), byPart(flags.labor, '--labor', parts)];
  const wanted: Record<string, Wanted> = {
    name: { flag: '--name', given: flags.name, asks: 'What is it called?', read: readName },
  };
  for (const [part, unit] of parts) {
    const of = part === 'main' ? '' : ` of ${part}`;
    const pair = part === 'main' ? '' : `${part}=`;
    const example = `${withSign('6.50')} / ${unitName(unit)}`;
    const reader = (text: string): Reading<unknown> => readPrice(text, unit);
    // What a form has passes through no shell.
    const typedAs = takesCommands && {
      readGiven: (text: string): Reading<unknown> => readSigned(text, reader, example),
    };
    wanted[`price ${part}`] = {
      flag: `--price '${pair}${example}'`,
      given: prices.get(part),
      asks: `Price${of}, material for one ${unitName(unit)}`,
      example,
      read: reader,
      ...typedAs,
    };
    wanted[`labor ${part}`] = {
      flag: '--labor',
      given: labors.get(part),
      asks: `Installation${of} for one ${unitName(unit)}; nothing where it is not priced yet`,
      usual: '',
      read: (text) => (text.trim() === '' ? read('') : reader(text)),
      ...typedAs,
    };
  }
  // What else an option has to tell is asked for when it is chosen.
  if (flags.lead !== undefined) wanted['lead'] = { flag: '--lead', given: flags.lead, asks: '', read: parseDays };
  for (const rule of category.attributes) {
    const given = set.get(rule.name);
    if (given !== undefined) wanted[`set ${rule.name}`] = attributeWanted(rule, given);
  }
  return wanted;
}

function attributeWanted(rule: AttributeRule, given: string | undefined): Wanted {
  const choices = rule.kind === 'yes-no' ? ['yes', 'no'] : rule.choices;
  const example = { length: unitExample(), lengths: `${unitExample()}, or several with commas`, number: '4' };
  return {
    flag: `--set ${rule.name}=${choices?.join('|') ?? '…'}`,
    given,
    asks: rule.label,
    ...(rule.kind in example && { example: example[rule.kind as keyof typeof example] }),
    ...(choices && { choices: choices.map((value) => ({ value, label: value })) }),
    read: (text) => readAttribute(text, rule),
  };
}

function unitExample(): string {
  return unitName('lin ft') === 'm' ? '90 mm' : '3 1/2"';
}

/** `key=value` of a flag that may come again. A UsageError tells of each that is none. */
function pairsOf(given: readonly string[], flag: string, known: readonly string[]): ReadonlyMap<string, string> {
  const pairs = given.map((pair) => /^([^=]*)=(.*)$/su.exec(pair) ?? [pair, '', pair]);
  const wrong = pairs.flatMap(([pair, key = '', value = '']) =>
    known.includes(key) ? [] : [`${flag} ${pair}  ${whyNoPair(key, value, known)}`],
  );
  if (wrong.length > 0) throw new UsageError(`${wrong.join('\n')}\nNothing was written.`);
  return new Map(pairs.map(([, key = '', value = '']) => [key, value] as const));
}

function whyNoPair(key: string, value: string, known: readonly string[]): string {
  const all = known.length === 0 ? 'this category asks nothing of its options' : `keys are ${known.join(', ')}`;
  if (key !== '') return `there is no key '${key}': ${didYouMean(key, known) ?? all}`;
  if (known.includes(value)) return `it has no value: write ${value}=VALUE`;
  return value === '' ? `it is empty: write KEY=VALUE; ${all}` : `it has no key: write KEY=${value}; ${all}`;
}

function byPart(
  given: readonly string[],
  flag: string,
  parts: readonly (readonly [string, Unit])[],
): ReadonlyMap<string, string> {
  const names = parts.map(([part]) => part);
  if (names.length > 1) return pairsOf(given, flag, names);
  const last = given.at(-1);
  return last === undefined ? new Map<string, string>() : new Map([[names[0] ?? 'main', last]]);
}

type Said = Readonly<Record<string, string>>;

function pricesOf(category: Category, said: Said): Readonly<Record<string, { material: string; labor?: string }>> {
  return Object.fromEntries(
    pricedParts(category).map(([part, unit]) => {
      const price = (text: string): string => valueOf(readPrice(text, unit));
      const labor = said[`labor ${part}`] ?? '';
      return [part, { material: price(said[`price ${part}`] ?? ''), ...(labor !== '' && { labor: price(labor) }) }];
    }),
  );
}

function attributesOf(category: Category, said: Said): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    category.attributes.flatMap((rule) => {
      const text = said[`set ${rule.name}`];
      return text === undefined ? [] : [[rule.name, valueOf(readAttribute(text, rule))]];
    }),
  );
}

/** How an option would stand in the house: whether its category has a quotation for all its options, which never covered a price that is new; and what it has
 *  still to tell, in words. */
function tryDrafted(
  option: Source,
  { open, records }: Adding,
): { readonly isQuotedByCategory: boolean; readonly lacks: string } {
  const { house, problems } = open.read([...records.sources, option]);
  const read = house?.records.options.find(({ origin }) => origin.file === option.path);
  const draft = problems.find(({ code, file }) => code === 'option-draft' && file === option.path);
  return {
    isQuotedByCategory: read?.shared?.some(({ key }) => key === 'quoted') === true,
    lacks: draft ? `It is ${draft.message}.\n${capital(draft.fix ?? '')}.\n` : '',
  };
}

/** Rooms with a selection of the category that is open. */
function openRooms({ slug }: Category, { rooms }: Records): readonly string[] {
  return rooms
    .filter(({ selections }) => selections.some(({ category, chosen }) => category === slug && chosen === undefined))
    .map((room) => room.slug);
}

async function whereConsidered(
  count: number,
  asker: NonNullable<ReturnType<Console['asker']>>,
): Promise<'all' | readonly string[]> {
  const answer = await asker.choice('Where may it be chosen?', [
    { value: 'all', label: `in ${counted(count, 'room')}, wherever it is still open` },
    { value: 'none', label: 'nowhere yet' },
  ]);
  return answer === 'all' ? 'all' : [];
}

function nowhereYet(category: string, { takesCommands }: Pick<Console, 'takesCommands'>): string {
  return takesCommands
    ? `Write its file name under considering, or chosen, of a ${category} in a room's record; --for all does so everywhere.\n`
    : `It is considered nowhere yet: on the page of a choice of ${category}, consider one more.\n`;
}

function told(
  option: Source,
  considered: readonly Source[],
  { name }: Category,
  isNamed: boolean,
  lacks: string,
  console: Console,
): string {
  const where =
    considered.length === 0 && isNamed
      ? `No ${name.toLowerCase()} is open there: all that the rooms have of it is chosen.\n`
      : considered.length === 0
        ? nowhereYet(name.toLowerCase(), console)
        : `It is considered in ${considered.map(({ path }) => path).join(', ')}.\n`;
  return `${option.path}\n${where}${lacks}`;
}
