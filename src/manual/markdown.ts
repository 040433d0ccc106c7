import { products, type Product } from '../core/fact/index.js';
import type { Source } from '../core/model/index.js';
import { exampleOf, examplesIn } from './examples.js';
import { groups, placeWords, type Group } from './groups.js';
import type { Key } from './keys.js';

/** A page of the reference: its file name and its Markdown. */
export interface ReferencePage {
  readonly name: string;
  readonly title: string;
  readonly markdown: string;
}

const made = '<!-- Made from schemas/ by `npm run reference`: change the schema instead. -->';

/** Which groups share a page. */
const pages = [
  { name: 'house', title: 'The house', groups: ['house', 'level', 'allowance', 'milestone'] },
  { name: 'room', title: 'Rooms', groups: ['room', 'ceiling', 'floor', 'opening'] },
  { name: 'feature', title: 'Features of rooms', groups: 'features' },
  { name: 'selection', title: 'Selections', groups: ['selection'] },
  { name: 'category', title: 'Categories', groups: ['category'] },
  { name: 'option', title: 'Options', groups: ['option', 'price-list'] },
  { name: 'trade', title: 'Trades', groups: ['trade'] },
  { name: 'alternative', title: 'Alternatives', groups: ['alternative'] },
  {
    name: 'written',
    title: 'Records that the program writes',
    groups: ['issue', 'signature', 'change-order', 'change-line'],
  },
] as const;

/** The reference of every key of every record, with examples from the records of a house. */
export function referencePages(sources: readonly Source[]): readonly ReferencePage[] {
  const all = groups();
  const find = examplesIn(sources);
  const section = (group: Group): string => sectionOf(group, (key) => exampleOf(key, find(group, key)));
  const byGroups = pages.map(({ name, title, groups: names }) => {
    const own = all.filter((group) =>
      names === 'features' ? group.place.under === 'features' : names.some((each) => each === group.name),
    );
    return { name, title, markdown: [`# ${title}`, made, ...own.map(section)].join('\n\n') + '\n' };
  });
  return [...byGroups, { name: 'attribute', title: attributesTitle, markdown: attributesPage() }];
}

function sectionOf(group: Group, example: (key: Key) => string | undefined): string {
  const rows = group.keys.map((key) => [
    `\`${key.path.join('.')}\`${key.isNeeded ? ' (needed)' : ''}`,
    `${key.meaning}${key.only.length === 0 ? '' : ` Only with ${key.only.map((each) => `\`${each}\``).join(', ')}.`}`,
    key.form,
    code(example(key)),
    key.readBy.join(', '),
  ]);
  return [
    `## ${group.title}`,
    `${group.meaning} In \`${placeWords(group.place)}\`.`,
    table(['key', 'what it says', 'how it is written', 'example', 'read by'], rows),
  ].join('\n\n');
}

const attributesTitle = 'Attributes that are read by name';

/** A category asks for what attributes it likes; these names are known to the program. */
function attributesPage(): string {
  const sections = Object.values<Product>(products).map(({ name, facts }) =>
    [
      `## ${name.charAt(0).toUpperCase()}${name.slice(1)}`,
      table(
        ['attribute', 'what it tells', 'kind', 'read by'],
        Object.entries(facts).map(([attribute, { tells, kind, unit, cautions = [], readers = [] }]) => [
          `\`${attribute}\``,
          tells,
          unit === undefined ? kind : `${kind}, ${unit}`,
          [...readers, ...cautions.map((rule) => `caution ${rule}`)].join(', '),
        ]),
      ),
    ].join('\n\n'),
  );
  const intro =
    'A category asks its options for whatever attributes its trade wants. Those of these names are read by cautions, schedules and drawings, too.';
  return [`# ${attributesTitle}`, made, intro, ...sections].join('\n\n') + '\n';
}

function code(text: string | undefined): string {
  return text === undefined ? '' : `\`${text.replaceAll('`', '’')}\``;
}

function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;
  return [line(heads), `|${heads.map(() => '---').join('|')}|`, ...rows.map(line)].join('\n');
}

/** Text in a cell of a Markdown table. `<name>` outside code would be taken for a tag. */
function cell(text: string): string {
  return text
    .replaceAll('|', '\\|')
    .replace(/\s+/gu, ' ')
    .replace(/(`[^`]*`)|</gu, (_, inCode: string | undefined) => inCode ?? '&lt;');
}
