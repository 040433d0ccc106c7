import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { choiceCommit, commitCommand } from '../../src/cli/choose/commit-choices.js';
import { signedText } from '../../src/cli/choose/choose-text.js';
import type { Book, SignedState } from '../../src/core/book/index.js';
import { digestOfBytes } from '../../src/signoff/index.js';
import { encodeSlip, type Slip, type SlipChoice } from '../../src/slip/index.js';
import { recordsDigest } from '../../src/disk/load/index.js';
import { readHouseFolder } from '../../src/disk/store/index.js';
import { shortDigest } from '../../src/base/units/index.js';
import { smallBook } from '../book/small-house.js';
import { HouseUnderGit } from './house-under-git.js';

const study = 'content/rooms/study.md';
const record = 'content/options/floor/oak.md';
const floor = 'study/floor/floor';
const ceiling = 'study/ceiling-board/ceiling';
const oak: SlipChoice = { selection: floor, was: 'pine', now: 'oak' };
const fir: SlipChoice = { selection: ceiling, was: null, now: 'fir-tg-1x6' };

let house: HouseUnderGit;
beforeEach(() => {
  house = new HouseUnderGit();
});
afterEach(() => house.remove());

/** The code line of a slip of the owner's. */
function code(choices: readonly SlipChoice[], more: Partial<Slip> = {}): string {
  return encodeSlip({ house: '1', snapshot: '', by: 'owner', on: '2026-04-18', choices, ...more });
}

/** Writes a slip beside the records; answers its way for a command line. */
function slipFile(name: string, choices: readonly SlipChoice[], more: Partial<Slip> = {}): string {
  house.write(name, `Hello, here is what we want.\n\n${code(choices, more)}\n\nRegards\n`);
  return join(house.dir, name);
}

const shortOf = (line: string): string => shortDigest(digestOfBytes(new TextEncoder().encode(line)));

describe('a slip is taken in', () => {
  test('with who chose, when, and by which slip; the commit is left to the builder', async () => {
    const { code: ended, out } = await house.run(`choose ${slipFile('mail.txt', [oak, fir])}`);
    expect(ended).toBe(0);
    const slip = shortOf(code([oak, fir]));
    const made = `chosen-on: 2026-04-18\n    chosen-by: The owner\n    slip: ${slip}\n`;
    expect(house.read(study)).toContain(`chosen: oak\n    ${made}`);
    expect(house.read(study)).toContain(
      `considering: [pine-shiplap-1x8, fir-tg-1x6]\n    chosen: fir-tg-1x6\n    ${made}`,
    );
    expect(out).toContain(`Choice slip ${slip}, HOUSE/mail.txt: 2 choices by The owner, 18 April 2026\n`);
    expect(out).toContain('  Study · floor: Pine strip → Oak strip\n');
    expect(out).toContain('  Study · ceiling board, ceiling: open → Fir');
    expect(out).toMatch(/Total \$[\d,.]+ → \$[\d,.]+, \+\$[\d,.]+\n/u);
    expect(out).toContain('Where the difference comes from');
    expect(out).toContain(`Written:\n${study}\n`);
    expect(out).toMatch(
      /git commit --author 'The owner <>' .*--trailer 'Choice-slip: [0-9a-f]{64}' -- content\/rooms\/study\.md\n/u,
    );
    expect(house.git('log', '--oneline').split('\n')).toHaveLength(2);
    // A shell takes the command that is told.
    execFileSync('sh', ['-c', /^ {2}(git commit .*)$/mu.exec(out)?.[1] ?? 'false'], { cwd: house.dir });
    expect(house.git('log', '-1', '--format=%an, %cn: %s%n%(trailers:key=Choice-slip,valueonly)').trim()).toBe(
      `The owner, Builder: 2 choices by The owner\n${digestOfBytes(new TextEncoder().encode(code([oak, fir])))}`,
    );
    expect(house.git('status', '--porcelain', '--', 'content')).toBe('');
    const again = await house.run(`choose ${join(house.dir, 'mail.txt')}`);
    expect(again).toMatchObject({ code: 0 });
    expect(again.out).toContain('All of it is chosen already.');
  });

  test('by a pipe, with its sentence, and committed in the name of who chose', async () => {
    house.edit('content/house.md', 'name: The owner }', 'name: The owner, contact: "evenings, owner@example.org" }');
    house.commit('An address');
    const note = 'The oak matches the stair.\u0000';
    const line = code([oak], { note });
    const { code: ended, out } = await house.run('choose - --commit', '2026-04-20', `> ${line}\n`);
    expect(ended).toBe(0);
    expect(out).toContain('Committed to git: 1 choice by The owner\n');
    const digest = digestOfBytes(new TextEncoder().encode(line));
    expect(house.git('log', '-1', '--format=%an <%ae>, %cn%n%s%n%b')).toMatch(
      new RegExp(
        `^The owner <owner@example.org>, Builder\\n1 choice by The owner\\nThe oak matches the stair\\..*\\n\\nChoice-slip: ${digest}\\n`,
        'u',
      ),
    );
    expect(house.git('log', '-1', '--format=%(trailers:key=Choice-slip,valueonly)').trim()).toBe(digest);
    expect(house.git('status', '--porcelain')).toBe('');
  });

  test('says whether the records are those that it was made from', async () => {
    const { files } = await readHouseFolder(house.dir);
    const snapshot = recordsDigest(files).slice(0, 12);
    const path = slipFile('slip.txt', [oak], { snapshot });
    expect((await house.run(`choose ${path} --dry-run`)).out).toContain('Made from the records as they are now.');
    house.edit(study, 'accounts', 'books');
    expect((await house.run(`choose ${path} --dry-run`)).out).toContain('The records have changed since it was made.');
  });

  test('not where it is only shown', async () => {
    const before = house.read(study);
    const { code: ended, out } = await house.run(`choose ${slipFile('slip.txt', [oak])} --dry-run --commit`);
    expect(ended).toBe(0);
    expect(out).toContain('Total $99,118.00 → $100,000.00, +$882.00');
    expect(out).toContain('Nothing was written.');
    expect(house.read(study)).toBe(before);
    expect(house.git('log', '--oneline').split('\n')).toHaveLength(2);
  });

  test('takes a choice away', async () => {
    const path = slipFile('slip.txt', [{ selection: floor, was: 'pine', now: null }]);
    expect(await house.run(`choose ${path}`)).toMatchObject({ code: 0 });
    expect(house.read(study)).toContain('considering: [oak, pine]\n  - at: ceiling\n');
  });

  test('not into a record with changes of somebody else, where it is to be committed', async () => {
    house.edit(study, 'accounts', 'books');
    const path = slipFile('slip.txt', [oak]);
    const { code: ended, error } = await house.run(`choose ${path} --commit`);
    expect(ended).toBe(1);
    expect(error).toContain(`not committed yet are changes in ${study}`);
    expect(await house.run(`choose ${path}`)).toMatchObject({ code: 0 });
  });
});

describe('a slip whose choices no longer hold', () => {
  test('is refused, each choice with what stands now and who chose it', async () => {
    house.edit(study, 'chosen: pine\n', 'chosen: none\n    chosen-on: 2026-04-19\n    chosen-by: The builder\n');
    const gone: SlipChoice = { selection: 'study/paint/walls', was: null, now: 'oat' };
    const unknown: SlipChoice = { ...fir, now: 'larch' };
    const before = house.read(study);
    const { code: ended, error } = await house.run(`choose ${slipFile('slip.txt', [oak, gone, unknown])}`);
    expect(ended).toBe(1);
    expect(error).toContain(`content/rooms/study.md:12: 101 Study: floor
  It was Pine strip when this was chosen, and is not wanted now, chosen by The builder on 19 April 2026; wanted is Oak strip.
study/paint/walls
  There is no such place in the house any more.
content/rooms/study.md:19: 101 Study: ceiling board, ceiling
  There is no option 'larch' any more.

Nothing was chosen. --except-conflicts leaves these out and takes the rest.
`);
    expect(house.read(study)).toBe(before);
  });

  test('leaves them out where that is asked for', async () => {
    house.edit(study, 'chosen: pine\n', 'chosen: none\n');
    const path = slipFile('slip.txt', [oak, fir]);
    const { code: ended, error } = await house.run(`choose ${path} --except-conflicts`);
    expect(ended).toBe(0);
    expect(error).toContain('It was Pine strip when this was chosen');
    expect(house.read(study)).toContain('chosen: none\n  - at: ceiling');
    expect(house.read(study)).toContain('chosen: fir-tg-1x6\n');
    expect(await house.run(`choose ${path} --except-conflicts`)).toMatchObject({ code: 1 });
  });

  test('is refused for what is ordered, with the order', async () => {
    house.edit(study, 'chosen: pine\n', 'chosen: pine\n    ordered: { on: 2026-03-02, option: pine, number: "B-7" }\n');
    const { code: ended, error } = await house.run(`choose ${slipFile('slip.txt', [oak])}`);
    expect(ended).toBe(1);
    expect(error).toContain('Ordered on 2 March 2026 as order B-7; it is changed in the record, with instead-of.');
  });

  test('is refused for what was withdrawn before, and the rest may be taken', async () => {
    house.edit(record, 'name:', 'withdrawn: { on: 2026-04-01, why: The mill closed }\nname:');
    const path = slipFile('slip.txt', [oak, fir]);
    const { code: ended, error } = await house.run(`choose ${path}`);
    expect(ended).toBe(1);
    expect(error).toContain('101 Study: floor\n  It was withdrawn on 1 April 2026: The mill closed.');
    expect(await house.run(`choose ${path} --except-conflicts`)).toMatchObject({ code: 0 });
    expect(house.read(study)).toContain('chosen: pine\n');
    expect(house.read(study)).toContain('chosen: fir-tg-1x6\n');
  });

  test('is refused for what the records refuse', async () => {
    house.edit(record, 'lead: 4 weeks\n', '');
    const before = house.read(study);
    const { code: ended, error } = await house.run(`choose ${slipFile('slip.txt', [oak])}`);
    expect(ended).toBe(1);
    expect(error).toContain('1 error in 1 file. Nothing was chosen.');
    expect(house.read(study)).toBe(before);
  });
});

describe('two slips', () => {
  test('that differ are shown over each other, and nothing is written', async () => {
    const first = slipFile('a.txt', [oak, fir]);
    const second = slipFile('b.txt', [{ ...oak, now: 'none' }, fir], { by: 'The builder', on: '2026-04-19' });
    const before = house.read(study);
    for (const flag of ['', ' --dry-run']) {
      const { code: ended, out, error } = await house.run(`choose ${first} ${second}${flag}`);
      expect(ended).toBe(1);
      expect(out).toMatch(/ceiling: open → Fir.* {2}\(HOUSE\/a\.txt and HOUSE\/b\.txt\)\n/u);
      expect(error).toContain(`The slips differ:

101 Study: floor
  HOUSE/a.txt: Oak strip, The owner, 18 April 2026
  HOUSE/b.txt: not wanted, The builder, 19 April 2026
`);
      expect(house.read(study)).toBe(before);
    }
  });

  test('that agree are taken together, each with its person in the commit', async () => {
    const paths = [slipFile('a.txt', [fir]), slipFile('b.txt', [oak, fir], { by: 'builder' })];
    expect(await house.run(`choose ${paths.join(' ')} --commit`)).toMatchObject({ code: 0 });
    const body = house.git('log', '-1', '--format=%B');
    expect(body).toContain('2 choices by The owner and The builder\n');
    expect(body.match(/^Choice-slip: /gmu)).toHaveLength(2);
    expect(body).toContain('Co-authored-by: The builder <>\n');
    expect(house.read(study)).toContain('chosen-by: The builder\n');
  });
});

describe('a slip that is none', () => {
  test.each<[string, () => string, RegExp]>([
    ['without a code line', () => 'Hello', /there is no code line in it/u],
    ['cut off', () => code([oak]).slice(0, -9), /its code line is cut off/u],
    ['of another house', () => code([oak], { house: '7' }), /it is of job 7, and this house is job 1\n/u],
    ['of nobody here', () => code([oak], { by: 'ownr' }), /'ownr' is not among the people .*did you mean 'owner'\?/u],
    ['that is no text', () => '\u0000\u0001', /it is no text/u],
    ['that is too long', () => 'A'.repeat(1_000_001), /it is longer than any slip/u],
  ])('%s is refused with its file', async (_, text, why) => {
    house.write('slip.txt', text());
    const { code: ended, error } = await house.run(`choose ${join(house.dir, 'slip.txt')}`);
    expect(ended).toBe(1);
    expect(error).toMatch(/^HOUSE\/slip\.txt: /u);
    expect(error).toMatch(why);
    expect(error).toContain('Nothing was chosen.\n');
  });

  test('and another one beside it are both told', async () => {
    house.write('a.txt', 'Hello');
    const path = slipFile('b.txt', [oak], { house: '7' });
    const { error } = await house.run(`choose ${join(house.dir, 'a.txt')} ${path}`);
    expect(error).toMatch(/a\.txt: there is no[\s\S]+b\.txt: it is of job 7[\s\S]+Nothing was chosen\.\n$/u);
  });
});

describe('chosen straight', () => {
  test.each([
    ['study floor oak', 'chosen: oak'],
    ['Study Floor "Oak strip"', 'chosen: oak'],
    ['101 floor none', 'chosen: none'],
    ['"101 Study" "Ceiling board, ceiling" fir-tg-1x6', 'chosen: fir-tg-1x6'],
    ['study ceiling-board/ceiling "not wanted"', 'chosen: none'],
  ])('%s', async (words, written) => {
    const { code: ended, out } = await house.run(`choose ${words} --by owner`);
    expect(ended).toBe(0);
    expect(house.read(study)).toContain(`${written}\n    chosen-on: 2026-04-20\n    chosen-by: The owner\n`);
    expect(out).not.toContain('Choice slip');
    expect(house.read(study)).not.toContain('slip:');
  });

  test('open leaves it open again', async () => {
    expect(await house.run('choose study floor open --by owner')).toMatchObject({ code: 0 });
    expect(house.read(study)).not.toContain('chosen');
    expect((await house.run('choose study floor open --by owner')).out).toContain('All of it is chosen already.');
  });

  test('an option that was not considered is taken, and told so', async () => {
    house.edit(study, 'considering: [oak, pine]', 'considering: [pine]');
    house.edit(study, 'standard: oak', 'standard: pine');
    const { out } = await house.run('choose study floor oak --by owner');
    expect(out).toContain('Pine strip → Oak strip, which was not among what is considered');
  });

  test.each([
    ['studdy floor oak --by owner', "there is no room 'studdy': did you mean 'Study'?"],
    ['study flor oak --by owner', "there is no place in Study 'flor': did you mean 'Floor'?"],
    ['study attic oak --by owner', "there is no place in Study 'attic': there is 'Ceiling board, ceiling' and 'Floor'"],
    ['study floor oack --by owner', "there is no option 'oack': did you mean 'oak'?"],
    [
      'study floor larch --by owner',
      "there is no option 'larch': there is 'Oak strip', 'Pine strip', 'none' and 'open'",
    ],
    ['study floor oak --by nobody', "--by: 'nobody' is not among the people"],
    ['study floor oak', '--by is missing: who chooses?'],
    ['study floor --by owner', '--by goes with a room, a place and an option'],
    ['study', 'the slip study: there is no such file'],
    ['- -', '- stands for standard input, once'],
  ])('%s: wrong usage', async (words, told) => {
    const before = house.read(study);
    const { code: ended, error } = await house.run(`choose ${words}`);
    expect(ended).toBe(2);
    expect(error).toContain(told);
    expect(house.read(study)).toBe(before);
  });

  test('a name that several places have is asked for again', async () => {
    house.edit(study, '  - at: ceiling\n', '  - { at: north, category: ceiling-board }\n  - at: ceiling\n');
    const { code: ended, error } = await house.run('choose study "Ceiling board" none --by owner');
    expect(ended).toBe(2);
    expect(error).toContain("'Ceiling board' is 2 places in Study: name one of 'Ceiling board, ");
    expect(await house.run('choose study north none --by owner')).toMatchObject({ code: 0 });
  });
});

test('what was signed is told, with the command that drafts the change order', () => {
  const book = smallBook();
  const signed = (state: SignedState['state']): Pick<Book, 'selections'> => ({
    selections: book.selections.map((one) => ({ ...one, signed: { issue: 2, state, what: [] } })),
  });
  const taken = [oak, fir].map((choice) => ({ choice, by: 'The owner', on: '2026-04-20', slips: [] }));
  expect(signedText(taken, signed('signed'))).toMatch(
    /^2 of these places are signed in issue-2: .*compare issue-2 HEAD --draft/u,
  );
  expect(signedText(taken.slice(1), signed('changed'))).toMatch(/^1 of these places is signed/u);
  expect(signedText(taken, signed('new'))).toBe('');
  expect(signedText(taken, book)).toBe('');
});

test('the command that is told names people as git and a shell take them', () => {
  const people = [
    { role: 'owner', name: "The O'Neils", contact: 'oneil@example.org (evenings)' },
    { role: 'designer', name: 'Ann <the designer>' },
  ];
  const taken = people.map(({ name }) => ({ choice: oak, by: name, on: '2026-04-20', slips: [] }));
  const commit = choiceCommit(taken, people);
  expect(commit).toMatchObject({
    author: "The O'Neils <oneil@example.org>",
    trailers: ['Co-authored-by: Ann the designer <>'],
    message: "2 choices by The O'Neils and Ann <the designer>\n\nCo-authored-by: Ann the designer <>",
  });
  expect(commitCommand(commit, ['content/rooms/a b.md'])).toBe(
    "git commit --author 'The O'\\''Neils <oneil@example.org>' --message '2 choices by The O'\\''Neils and Ann <the designer>' " +
      "--trailer 'Co-authored-by: Ann the designer <>' -- 'content/rooms/a b.md'",
  );
});
