import type { Command } from 'commander';
import { layers, type Layer, type Records, type Source } from '../../core/model/index.js';
import { appendItem, readFrontMatter, slugOfPath, type RawCategory } from '../../core/records/index.js';
import { joinWords, read, unread, type Reading } from '../../base/units/index.js';
import { draftCategory, freshSlug, measuredBy, readName, type Library } from '../../draft/index.js';
import type { Console } from '../console.js';
import { UsageError } from '../usage-error.js';
import { addingCommand, addRecords, openLibrary, openToAdd, type Adding } from './add-records.js';
import { nameWanted, take, valueOf, type Wanted } from './take.js';

interface CategoryFlags {
  readonly house: string;
  readonly trade?: string;
  readonly by?: string;
  readonly milestone?: string;
  readonly layer?: string;
  readonly section?: string;
}

/** `bookmatch new category stone-facing`: a kind of finish. One that the program knows comes with its convention, its trade and its
 *  milestone; any other is asked for. */
export function newCategory(console: Console, done: (code: number) => void): Command {
  return addingCommand('category')
    .description('a kind of finish, with how it is measured and who does it')
    .argument(
      '[name]',
      'its name, or one that the program knows: fireplace, hearth, stone-facing, exposed-timber, sound-insulation',
    )
    .option('--trade <trade>', 'the trade that does it, by its file name')
    .option('--by <way>', `how it is measured: ${measuredBy.map(({ value }) => value).join(', ')}`)
    .option('--milestone <milestone>', 'milestone at which it must be on site')
    .option('--layer <layer>', `its place in the build-up: ${layers.join(', ')}`)
    .option('--section <section>', 'specification section, such as "06 20 00"')
    .action(async (named: string | undefined, flags: CategoryFlags) => {
      const adding = await openToAdd(flags.house, 'category', console);
      if (!adding) return done(1);
      const library = await openLibrary();
      const slugs = adding.records.categories.map(({ slug }) => slug);
      const known = named !== undefined && !slugs.includes(named) ? library.take('categories', named) : undefined;
      const written = known ? withTrade(known, library, adding) : [await asked(named, flags, adding, console)];
      if (!(await addRecords(adding, written, console))) return done(1);
      const slug = slugOfPath(written[0]?.path ?? '');
      console.tell(
        `${written.map(({ path }) => path).join('\n')}\n` +
          `Write it under selections of the rooms that have it: { at: …, category: ${slug} }.\n` +
          `\n  bookmatch new option ${slug}${adding.house}\n`,
      );
      done(0);
    });
}

/** A convention of the library, with the trade and the milestones that the house lacks. */
function withTrade(category: Source, library: Library, { records }: Adding): readonly Source[] {
  const raw = (readFrontMatter(category).value?.data ?? {}) as Partial<RawCategory>;
  const trade = records.trades.some(({ slug }) => slug === raw.trade)
    ? undefined
    : library.take('trades', raw.trade ?? '');
  const early = [raw['fixes-early'] ?? []].flat().map(({ milestone }) => milestone);
  const lacking = lackingMilestones([raw['needed-at'] ?? '', ...early], library, records);
  const house = records.sources.find(({ path }) => path === records.house.origin.file);
  const added = library.milestones.filter(({ id }) => lacking.includes(id));
  const text = added.reduce(
    (before, one) => appendItem(before, 'milestones', { ...one }, ['calendar']),
    house?.text ?? '',
  );
  return [category, ...(trade ? [trade] : []), ...(house && added.length > 0 ? [{ path: house.path, text }] : [])];
}

/** Milestones that the house lacks, back to one that it has. A UsageError where none of the library's leads there. */
function lackingMilestones(ids: readonly string[], { milestones }: Library, { house }: Records): readonly string[] {
  const has = new Set(house.milestones.map(({ id }) => id));
  const lacking = new Set<string>();
  for (const named of ids) {
    for (let id: string | undefined = named; id !== undefined && !has.has(id) && !lacking.has(id);) {
      const after = milestones.find((one) => one.id === id)?.after;
      if (after === undefined) {
        const all = ids.filter((one) => !has.has(one)).join(', ');
        throw new UsageError(
          `it waits for milestones that this house does not have: ${all}. Write them in ${house.origin.file} first. Nothing was written.`,
        );
      }
      lacking.add(id);
      id = after;
    }
  }
  return [...lacking];
}

async function asked(
  named: string | undefined,
  flags: CategoryFlags,
  { records }: Adding,
  console: Console,
): Promise<Source> {
  const { trades, house, categories } = records;
  const said = await take(
    {
      name: nameWanted('category', named, categories),
      trade: oneOf(
        '--trade',
        flags.trade,
        'Who does it?',
        trades.map(({ slug, name }) => [slug, name]),
      ),
      by: oneOf(
        '--by',
        flags.by,
        'How is it measured?',
        measuredBy.map(({ value, label }) => [value, label]),
      ),
      milestone: oneOf(
        '--milestone',
        flags.milestone,
        'When must it be on site?',
        house.milestones.map(({ id, name }) => [id, name]),
      ),
      layer: {
        ...oneOf(
          '--layer',
          flags.layer,
          'Its place in the build-up?',
          layers.map((layer) => [layer, layer]),
        ),
        usual: 'finish',
      },
      section: {
        flag: '--section',
        given: flags.section,
        asks: 'Specification section?',
        usual: '01 00 00',
        read: (text) =>
          /^\d{2} \d{2} \d{2}$/u.test(text.trim())
            ? read(text)
            : unread(`'${text}' is no section`, 'write it like 06 20 00'),
      },
    },
    console.asker(),
  );
  const name = valueOf(readName(said.name));
  return draftCategory({
    slug: freshSlug(name, new Set(categories.map(({ slug }) => slug)), `category-${categories.length + 1}`),
    name,
    trade: said.trade,
    section: said.section.trim(),
    sequence: Math.max(0, ...categories.map(({ sequence }) => sequence)) + 1,
    milestone: said.milestone,
    layer: valueOf(isLayer(said.layer)),
    by: measuredBy.find(({ value }) => value === said.by)?.value ?? 'each',
  });
}

function isLayer(text: string): Reading<Layer> {
  const found = layers.find((layer) => layer === text);
  return found ? read(found) : unread(`'${text}' is no layer`, `layers are ${joinWords(layers)}`);
}

function oneOf(
  flag: string,
  given: string | undefined,
  asks: string,
  among: readonly (readonly [value: string, label: string])[],
): Wanted {
  const values = among.map(([value]) => value);
  return {
    flag: `${flag} ${values.length <= 6 ? values.join('|') : '…'}`,
    given,
    asks,
    choices: among.map(([value, label]) => ({ value, label })),
    read: (text) =>
      values.includes(text) ? read(text) : unread(`there is no '${text}'`, `write one of ${values.join(', ')}`),
  };
}
