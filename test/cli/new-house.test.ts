import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../../src/cli/main.js';
import type { Asker } from '../../src/cli/asker.js';
import { makeConsole } from './make-console.js';
import { someone } from './someone.js';

const scratch = mkdtempSync(join(tmpdir(), 'bookmatch-new-'));
afterAll(() => rmSync(scratch, { recursive: true }));

interface Said {
  readonly code: number;
  readonly said: string;
}

/** Words as a shell parts them: what stands in single quotes stays together. */
function wordsOf(line: string): readonly string[] {
  return (line.match(/(?:[^\s“]|“[^”]*”)+/gu) ?? []).map((word) => word.replace(/[“”]/gu, ''));
}

async function type(words: readonly string[], asker?: Asker): Promise<Said> {
  let said = '';
  const take = (text: string): void => void (said += text);
  const console = makeConsole({
    out: take,
    error: take,
    today: () => '2026-03-02',
    ...(asker && { asker: () => asker }),
  });
  return { code: await run(words, console), said };
}

const feet = {
  name: 'feet',
  start: [
    'new DIR --name “Fern Hill” --place “Alder County” --units feet --currency USD --sum $480000',
    `--room “Kitchen 14' x 12'”`,
    `--room “Living room 18' x 16'”`,
    `--room “Bath 8' x 6'”`,
    `--room “Bedroom 13' x 12'”`,
    `--room “Bedroom 2 11' x 12'-6"”`,
    `--room “Hall 4' x 14'”`,
  ],
  floor: [
    'new option floor --house DIR --name “Oak strip” --price $8.50 --labor $5 --lead “6 weeks” --for all',
    `--set kind=solid --set species=Oak --set grade=Select --set “face=2 1/4"” --set “build-up=3/4"” --set finish=Oiled --set laid=nailed`,
  ],
  // 14 × 12 = 168 sq ft, with nothing added: 168 × 13.50.
  paint: '$2',
  share: '$2,268',
  shown: '168',
};

const metres = {
  name: 'metres',
  start: [
    'new DIR --name “Fern Hill” --place “Alder Valley” --units metres --currency EUR --sum €480000',
    '--room “Kitchen 4.2 x 3.6 m”',
    '--room “Living room 5.4 x 4.8 m”',
    '--room “Bath 2.4 x 1.8 m”',
    '--room “Bedroom 4 m x 3.6 m”',
    '--room “Bedroom 2 3.4 x 3.6 m”',
    '--room “Hall 1.2 x 4.2 m”',
  ],
  floor: [
    'new option floor --house DIR --name “Oak strip” --price €80 --labor €20 --lead “6 weeks” --for all',
    '--set kind=solid --set species=Oak --set grade=Select --set “face=60 mm” --set “build-up=20 mm” --set finish=Oiled --set laid=nailed',
  ],
  // 4.2 × 3.6 = 15.12 m² at 100 each.
  paint: '€2',
  share: '€1,512',
  shown: '15.12',
};

const paint = (price: string): readonly string[] => [
  `new option paint --house DIR --name Oat --price ${price} --labor ${price} --lead “1 week” --for kitchen`,
  '--set sheen=matte --set coats=2 --set color=Oat --set code=none --set coverage=10 --set primer=none',
];

describe.each([feet, metres])('somebody who knows nothing builds a book of six rooms in $name', (house) => {
  const dir = join(scratch, house.name);
  let lines = 0;
  const enter = (typed: readonly string[]): Promise<Said> => {
    lines += typed.length;
    return type(wordsOf(typed.join(' ').replaceAll('DIR', dir)));
  };
  /** A line typed under another in a record. */
  const addLine = (path: string, under: string, line: string): void => {
    lines += 1;
    const text = readFileSync(join(dir, path), 'utf8');
    expect(text).toContain(under);
    writeFileSync(join(dir, path), text.replace(under, `${under}\n${line}`));
  };

  beforeAll(async () => {
    expect(await enter(house.start)).toMatchObject({ code: 0 });
    expect(await enter(house.floor)).toMatchObject({ code: 0 });
    expect(await enter(paint(house.paint))).toMatchObject({ code: 0 });
    addLine('content/rooms/kitchen.md', '      - oak-strip', '    chosen: oak-strip');
    addLine('content/rooms/kitchen.md', '      - oat', '    chosen: oat');
    expect(await enter(['build --house DIR'])).toMatchObject({ code: 0 });
  }, 240_000);

  it('in fewer than twenty typed lines', () => {
    expect(lines).toBeLessThan(20);
  });

  it('and each room has its page', () => {
    expect(readFileSync(join(dir, 'README.md'), 'utf8')).toMatch(/^git add --all .*\ngit commit -m /mu);
    const start = readFileSync(join(dir, '_site/book/index.html'), 'utf8');
    for (const room of ['Kitchen', 'Living room', 'Bath', 'Bedroom', 'Bedroom 2', 'Hall'])
      expect(start).toContain(room);
    const pages = ['kitchen', 'living-room', 'bath', 'bedroom', 'bedroom-2', 'hall'];
    for (const page of pages) expect(existsSync(join(dir, `_site/book/rooms/${page}.html`))).toBe(true);
    expect(existsSync(join(dir, '_site/book.pdf'))).toBe(true);
  });

  it('with what was decided, measured and priced', () => {
    const kitchen = readFileSync(join(dir, '_site/book/rooms/kitchen.html'), 'utf8');
    expect(kitchen).toContain('Oak strip');
    expect(kitchen).toContain(house.shown);
    expect(kitchen).toContain(house.share);
  });

  it('links every open choice, also of what has no option yet', () => {
    const start = readFileSync(join(dir, '_site/book/index.html'), 'utf8');
    expect(start.replace(/<[^>]*>/gu, '')).not.toMatch(/· {2}?·|· by/u);
  });

  it('and check says what is still to fill in, once for each thing', async () => {
    const { code, said } = await type(['check', '--house', dir]);
    expect(code).toBe(0);
    const codes = [...said.matchAll(/^\S.*:\d+:\d+ {2}(\S+) {2}/gmu)].map(([, found]) => found);
    const count = (wanted: string): number => codes.filter((found) => found === wanted).length;
    expect(count('amount-zero')).toBe(5);
    expect(count('room-apart')).toBe(1);
    expect(count('option-missing')).toBe(5);
    expect(count('tape-suspect') + count('walls-out-of-line')).toBe(0);
  });
});

describe('asked at a terminal', () => {
  it('takes answers one by one, asks again for what cannot be read, and writes the house', async () => {
    const dir = join(scratch, 'asked');
    const typed = [
      'Our house',
      'Somewhere',
      'feet',
      'dollars',
      'USD',
      '',
      '',
      '',
      '',
      '',
      '',
      "Kitchen 0' x 12'",
      "Kitchen 14' x 12'",
      '',
    ];
    const { asker, asked } = someone(typed);
    const { code, said } = await type(['new', dir], asker);
    expect(said).toContain('Our house, 1 room');
    expect(code).toBe(0);
    expect(asked.filter((question) => question.includes('currency'))).toHaveLength(2);
    expect(existsSync(join(dir, 'content/rooms/kitchen.md'))).toBe(true);
  });

  it('asks nothing that a flag says, and nothing at all with --yes', async () => {
    const dir = join(scratch, 'flags');
    const { asker, asked } = someone([]);
    const flags = ['--name', 'A', '--place', 'B', '--units', 'feet', '--currency', 'USD', '--room', "Kitchen 9' x 9'"];
    expect((await type(['new', dir, ...flags, '--yes'], asker)).code).toBe(0);
    expect(asked).toEqual([]);
  });

  it('asks of an option its name, its price and where it may be chosen, and nothing that can wait', async () => {
    const dir = join(scratch, 'flags');
    const { asker } = someone(['Oak', '$7', '', 'in 1 room']);
    const { code, said } = await type(['new', 'option', 'floor', '--house', dir], asker);
    expect(said).toContain('It is considered in content/rooms/kitchen.md');
    expect(code).toBe(0);
    expect(readFileSync(join(dir, 'content/options/floor/oak.md'), 'utf8')).toBe(
      '---\nname: Oak\nprice:\n  material: $7 / sq ft\n---\n',
    );
  });
});

describe('what cannot be a house', () => {
  const fine: Readonly<Record<string, string>> = { name: 'A', place: 'B', units: 'feet', currency: 'USD' };
  const wrong: readonly (readonly [string, Readonly<Record<string, string>>, readonly string[], RegExp])[] = [
    [
      'a name of control characters',
      { name: '\u0007\u0000\u001b[31m' },
      ["Hall 9' x 9'"],
      /--name {2}it has a character/u,
    ],
    ['an empty name', { name: '  ' }, ["Hall 9' x 9'"], /--name {2}it is empty/u],
    ['units that there are not', { units: 'cubits' }, ["Hall 9' x 9'"], /--units {2}'cubits'.*feet or metres/u],
    [
      'a currency that there is not',
      { currency: 'XQQ' },
      ["Hall 9' x 9'"],
      /--currency {2}there is no currency 'XQQ'/u,
    ],
    ['a sum of less than nothing', { sum: '-$5' }, ["Hall 9' x 9'"], /--sum {2}'-\$5' is less than nothing/u],
    [
      'a sum that a shell took the sign from',
      { sum: '80,000' },
      ["Hall 9' x 9'"],
      /--sum {2}'80,000' has no currency sign/u,
    ],
    ['an amount for who decides', { owner: '$485,000' }, ["Hall 9' x 9'"], /--owner {2}'\$485,000' is nobody's name/u],
    ['a zone that there is not', { 'climate-zone': 'hot' }, ["Hall 9' x 9'"], /--climate-zone .*5A/u],
    ['a ceiling of nothing', { ceiling: "0'" }, ["Hall 9' x 9'"], /--ceiling {2}'0'' is no height/u],
    ['a day that there is not', { start: '2026-02-31' }, ["Hall 9' x 9'"], /--start .*February 2026 has 28 days/u],
    ['a size of nothing', {}, ["Hall 0' x 9'"], /--room {2}'Hall 0' x 9'': .*more than 0/u],
    ['a size without units', {}, ['Hall 9 x 9'], /--room {2}'Hall 9 x 9': '9' has no unit/u],
    ['a room without a size', {}, ['Hall'], /--room {2}'Hall': it has no size/u],
    ['a side of a mile', {}, ["Hall 5280' x 9'"], /longer than 500'-0"/u],
    ['a use that there is not', {}, ["Hall 9' x 9' as kitchn"], /did you mean 'kitchen'/u],
    ['two rooms of one name', {}, ["Hall 9' x 9'", "hall 8' x 8'"], /two rooms are named 'hall'/u],
    [
      'two hundred rooms',
      {},
      Array.from({ length: 200 }, (_, index) => `Room ${index} 9' x 9'`),
      /200 rooms are more than the 100/u,
    ],
    ['no room', {}, [], /A new house needs --room/u],
  ];

  it.each(wrong)('%s is told, and nothing is written', async (_, answers, rooms, message) => {
    const home = mkdtempSync(join(scratch, 'wrong-'));
    const given = Object.entries({ ...fine, ...answers }).flatMap(([flag, value]) => [`--${flag}=${value}`]);
    const { code, said } = await type([
      'new',
      join(home, 'house'),
      ...given,
      ...rooms.flatMap((room) => ['--room', room]),
    ]);
    expect(said).toMatch(message);
    expect(said).toContain('Nothing was written.');
    expect(code).toBe(2);
    expect(readdirSync(home)).toEqual([]);
  });

  it('everything that is wrong is told at once, and everything that is missing', async () => {
    const home = mkdtempSync(join(scratch, 'wrong-'));
    const { said } = await type(['new', join(home, 'house'), '--units', 'feet', '--currency', 'USD']);
    expect(said).toContain('--name <name>, --place <place> and --room');
    const more = await type([
      'new',
      join(home, 'house'),
      '--name',
      '',
      '--place',
      '',
      '--units',
      'x',
      '--currency',
      'y',
      '--room',
      'z',
    ]);
    expect(more.said.match(/^--\w+ {2}/gmu)).toEqual(['--units  ', '--currency  ', '--name  ', '--place  ']);
  });

  const flags = ['--name', 'A', '--place', 'B', '--units', 'feet', '--currency', 'USD', '--room', "Kitchen 9' x 9'"];

  it('a folder that is not empty, a file, and what lies in a file', async () => {
    const home = mkdtempSync(join(scratch, 'taken-'));
    mkdirSync(join(home, 'full'));
    writeFileSync(join(home, 'full', 'letter.txt'), 'Dear');
    writeFileSync(join(home, 'file'), 'a file');
    for (const [dir, words] of [
      ['full', 'is not empty'],
      ['file', 'is a file'],
      ['file/house', 'is a file'],
    ] as const) {
      const { code, said } = await type(['new', join(home, dir), ...flags]);
      expect(said).toContain(words);
      expect(code).toBe(2);
    }
    expect(readdirSync(home).sort()).toEqual(['file', 'full']);
    expect(readdirSync(join(home, 'full'))).toEqual(['letter.txt']);
  });

  it('a place where nothing may be written', async () => {
    const { code, said } = await type(['new', '/proc/house', ...flags]);
    expect(said).toMatch(/cannot be written/u);
    expect(code).toBe(2);
  });

  it('no folder named, which would be the one that one stands in', async () => {
    const { code, said } = await type(['new', '', ...flags]);
    expect(said).toBe('no folder is named: write its name, or . for this one. Nothing was written.\n');
    expect(code).toBe(2);
  });

  it('a folder whose name a shell would part stands in quotes in the commands that come next', async () => {
    const dir = join(mkdtempSync(join(scratch, 'parted-')), "Our house's");
    const { said } = await type(['new', dir, ...flags]);
    expect(said).toContain(`bookmatch build --house '${dir.replace("'", String.raw`'\''`)}'\n`);
  });

  it('an empty folder stays the folder that it was', async () => {
    const dir = mkdtempSync(join(scratch, 'empty-'));
    expect((await type(['new', dir, ...flags])).code).toBe(0);
    expect(readdirSync(dir).sort()).toEqual(expect.arrayContaining(['.gitignore', 'README.md', 'content']));
  });

  it('a folder named as one of its commands is written with ./', async () => {
    const { code, said } = await type(['new', 'room', "Bath 8' x 6'", '--house', scratch]);
    expect(said).toContain('a folder named room is written ./room');
    expect(code).toBe(2);
  });
});
