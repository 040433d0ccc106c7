import type { Source } from '../../src/core/model/index.js';
import { seeded } from '../signoff/seeded.js';

/** One thing that is changed in records: where it may stand, and what it becomes. */
interface Edit {
  readonly name: string;
  readonly in: RegExp;
  readonly find: RegExp;
  readonly becomes: (found: RegExpExecArray, some: (below: number) => number) => string;
}

const edits: readonly Edit[] = [
  {
    name: 'the height of a room',
    in: /rooms\//,
    find: /^ceiling: flat (\d+)'-\d+"$/gmu,
    becomes: ([, feet], some) => `ceiling: flat ${feet}'-${some(12)}"`,
  },
  {
    name: 'a price',
    in: /options\//,
    find: /(material: \$)(\d+)/gu,
    becomes: ([, sign, dollars], some) => `${sign}${Number(dollars) + 1 + some(9)}`,
  },
  {
    name: 'a choice that is made',
    in: /rooms\//,
    find: /^( +considering: \[([^\]]+)\]\n)(?! +chosen)/gmu,
    becomes: ([, line = '', list = ''], some) => {
      const options = list.split(', ');
      const indent = line.slice(0, line.search(/\S/u));
      const chosen = [`chosen: ${options[some(options.length)]}`, 'chosen-on: 2026-04-01', 'chosen-by: The owners'];
      return `${line}${chosen.map((key) => `${indent}${key}\n`).join('')}`;
    },
  },
  {
    name: 'a choice that is another',
    in: /rooms\//,
    find: /considering: \[([^\]]+)\]\n( +)chosen: \S+/gu,
    becomes: ([, list = '', indent], some) => {
      const options = list.split(', ');
      return `considering: [${list}]\n${indent}chosen: ${options[some(options.length)]}`;
    },
  },
  {
    name: 'the day of a milestone',
    in: /house\.md/,
    find: /(after: [\w-]+, days: )(\d+)/gu,
    becomes: ([, after, days], some) => `${after}${Number(days) + 1 + some(9)}`,
  },
  {
    name: 'waste',
    in: /categories\//,
    find: /waste: \d+ %/gu,
    becomes: (_, some) => `waste: ${1 + some(20)} %`,
  },
  {
    name: 'an allowance',
    in: /house\.md/,
    find: /^( +amount: \$)(\d+),(\d+)$/gmu,
    becomes: ([, sign, thousands, rest], some) => `${sign}${Number(thousands) + some(5)},${rest}`,
  },
  {
    name: 'lead time',
    in: /options\//,
    find: /lead: (\d+) weeks/gu,
    becomes: ([, weeks], some) => `lead: ${Number(weeks) + 1 + some(4)} weeks`,
  },
  { name: 'lines that move', in: /rooms\//, find: /^name:/gmu, becomes: () => '# Looked at again.\nname:' },
  { name: 'what is said of a room', in: /rooms\//, find: /$(?![\s\S])/gu, becomes: () => '\nLooked at again.\n' },
];

/** One edit after the other by a seed, each of the records as the one before left them; of every seventh, a room is taken away, for that time alone. */
export function editedRecords(
  records: readonly Source[],
  count: number,
  seed = 1,
): readonly { readonly what: string; readonly sources: readonly Source[] }[] {
  const random = seeded(seed);
  const some = (below: number): number => Math.floor(random() * below);
  let sources = records;
  return Array.from({ length: count }, (_, time) => {
    if (time % 7 === 6) {
      const rooms = sources.filter(({ path }) => path.includes('/rooms/'));
      const gone = rooms[some(rooms.length)];
      return { what: `${gone?.path} is gone`, sources: sources.filter((source) => source !== gone) };
    }
    const edit = edits[time < edits.length ? time : some(edits.length)] as Edit;
    const places = sources.flatMap(({ path, text }, at) =>
      edit.in.test(path) ? [...text.matchAll(edit.find)].map((found) => ({ at, found })) : [],
    );
    const place = places[some(places.length)];
    if (!place) throw new Error(`the demo has no place for ${edit.name}`);
    const { at, found } = place;
    const { path, text } = sources[at] as Source;
    const becomes = edit.becomes(found as RegExpExecArray, some);
    const written = `${text.slice(0, found.index)}${becomes}${text.slice(found.index + found[0].length)}`;
    sources = sources.with(at, { path, text: written });
    return { what: `${edit.name}, ${path}`, sources };
  });
}
