import { readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { plainKeys } from '../../src/manual/index.js';
import { study, visitedDesk } from './small-house.js';
import { plain } from './visit.js';

const at = visitedDesk();
const { ask, formOf, send, textOf } = at;
const choice = '/choices/study/ceiling-board/ceiling.html';
const remark = 'remark/study/ceiling-board/ceiling';

async function undone(before: string, path = study): Promise<void> {
  await send(await formOf('/desk/index.html', 'undo'));
  expect(await textOf(path)).toBe(before);
}

it('writes a remark at a place, changes it, and takes it away', async () => {
  const before = await textOf();
  await send(await formOf(choice, remark), { note: 'Boards run\r\nalong  the ridge.' });
  expect(await textOf()).toContain('    note: Boards run along the ridge.\n');
  expect((await ask('GET', choice)).text).toContain('Boards run along the ridge.</textarea>');
  await send(await formOf(choice, remark), { note: '' });
  expect(await textOf()).toBe(before);
});

it('never writes a remark over another one that came meanwhile, and takes one back', async () => {
  const before = await textOf();
  const [first, second] = [await formOf(choice, remark), await formOf(choice, remark)];
  await send(first, { note: 'First.' });
  const { headers } = await send(second, { note: 'Second.' });
  expect(await textOf()).toContain('note: First.');
  expect((await ask('GET', String(headers['location']))).text).toContain('It is First. meanwhile, no longer empty.');
  await undone(before);
});

it('adds a note to what the room tells, with who says it, and takes it back', async () => {
  const before = await textOf();
  const form = await formOf('/rooms/study.html', 'note/study');
  await send(form, { say: 'The shelf stays.\r\n\r\nIt is older than the house.', by: 'owner', readers: 'book' });
  expect(await textOf()).toBe(
    `${before}\n**The owner, 20 April 2026.** The shelf stays.\n\nIt is older than the house.\n`,
  );
  expect((await ask('GET', '/rooms/study.html')).text).toContain('The shelf stays.');
  await undone(before);
});

it('says where handouts leave a note out, keeps its lines, and takes it back from the page that says so', async () => {
  const before = await textOf();
  const form = await formOf('/rooms/study.html', 'note/study');
  const say = 'The hood costs $1,200.\r\nMind the paint.\r\n- and the floor';
  const { headers } = await send(form, { say, by: 'owner', readers: 'trades' });
  expect(await textOf()).toContain('The hood costs $1,200.\\\nMind the paint.\n- and the floor\n');
  const { text } = await ask('GET', String(headers['location']));
  expect(text).toContain('1 more thing to look at since');
  expect(text).toContain('speaks of money in the notes for trades');
  const [, number = ''] = /name="number" value="(\d+)"/u.exec(text) ?? [];
  const secret = form.get('secret') ?? '';
  const back = await send(new URLSearchParams({ secret, ask: 'undo', number, back: 'rooms/study.html' }));
  expect(back.headers['location']).toBe('/rooms/study.html');
  expect(await textOf()).toBe(before);
});

it('writes the same note once, from whichever window it comes', async () => {
  const before = await textOf();
  const filled = { say: 'Said once.', by: 'owner', readers: 'book' };
  await send(await formOf('/rooms/study.html', 'note/study'), filled);
  const once = await textOf();
  const { headers } = await send(await formOf('/rooms/study.html', 'note/study'), filled);
  expect((await ask('GET', String(headers['location']))).text).toContain('it says that already');
  expect(await textOf()).toBe(once);
  await undone(before);
});

it('takes no choice of a day that has not come', async () => {
  const before = await textOf();
  const form = await formOf(choice, 'choose/study/ceiling-board/ceiling');
  const { headers } = await send(form, { option: 'fir-tg-1x6', by: 'owner', on: '2026-04-21' });
  expect((await ask('GET', String(headers['location']))).text).toContain(
    '&#39;On&#39; is a day that has not come yet.'.replaceAll('&#39;', "'"),
  );
  expect(await textOf()).toBe(before);
});

it('takes no note that cannot be read again, and none in a place that the form is not of', async () => {
  const before = await textOf();
  for (const say of ['a \0 b', 'a \u0007 b', '<!-- builder --> b', ' '])
    await send(await formOf('/rooms/study.html', 'note/study'), { say, by: 'owner', readers: 'book' });
  await send(await formOf(choice, remark), { note: '--house=/tmp', 'selection.place': 'floor' });
  expect(await textOf()).toContain('note: --house=/tmp');
  expect((await textOf()).indexOf('note:')).toBeGreaterThan((await textOf()).indexOf('at: ceiling'));
  await undone(before);
});

it('asks for every plain key that the schemas of an allowance, a milestone and an option have', async () => {
  const add = (await ask('GET', '/desk/add.html?category=floor')).text;
  const formFor = (id: string): string =>
    add.split('<form').find((one) => one.includes(`name="ask" value="${id}"`)) ?? '';
  for (const [id, group, made] of [
    ['new-allowance', 'allowance', ['id']],
    ['new-milestone', 'milestone', ['id']],
    ['new-option/floor', 'option', []],
  ] as const)
    for (const { name, meaning } of plainKeys(group).filter((key) => !made.some((other) => other === key.name))) {
      expect(formFor(id), `${id} asks for ${name}`).toContain(`name="${name}"`);
      if (meaning.toLowerCase() === `${name}.`) continue;
      const words = meaning.replaceAll('&', '&amp;').replaceAll('"', '&quot;');
      expect(formFor(id).replaceAll('&#39;', "'"), `${id} says what ${name} means`).toContain(words);
    }
});

it('adds a milestone that follows another, and says in place why it would not', async () => {
  const before = await textOf('content/house.md');
  const form = await formOf('/desk/add.html', 'new-milestone');
  await send(form, { name: 'Tile set', after: 'drywall', days: '10', note: 'Before the trim.', date: '' });
  expect(await textOf('content/house.md')).toContain(
    '  - { id: tile-set, name: Tile set, after: drywall, days: 10, note: Before the trim. }\n',
  );
  await undone(before, 'content/house.md');
  await send(await formOf('/desk/add.html', 'new-milestone'), { name: 'Tile set' });
  expect((await ask('GET', '/desk/add.html')).text).toContain('write date, or after and days');
  expect(await textOf('content/house.md')).toBe(before);
});

it('adds an allowance for the categories that are ticked', async () => {
  const before = await textOf('content/house.md');
  const form = await formOf('/desk/add.html', 'new-allowance');
  form.append('covers', 'material');
  form.append('covers', 'tax');
  form.append('categories', 'floor');
  form.append('categories', 'ceiling-board');
  await send(form, { name: 'Woods', amount: '$900' });
  expect(await textOf('content/house.md')).toContain(
    '{ id: woods, name: Woods, amount: $900, covers: [ material, tax ], categories: [ floor, ceiling-board ] }',
  );
  await undone(before, 'content/house.md');
});

it('asks for an option by its category, and comes back to that category where something is wrong', async () => {
  const form = await formOf('/desk/add.html?category=ceiling-board', 'new-option/ceiling-board');
  const filled = { name: 'Elm boards', maker: 'A yard', 'labor.main': '', for: 'study' };
  const { headers } = await send(form, { ...filled, 'material.main': 'six dollars' });
  expect(headers['location']).toBe('/desk/add.html?category=ceiling-board');
  expect((await ask('GET', String(headers['location']))).text).toContain('is not a price');
  const room = await textOf();
  await send(form, { ...filled, 'material.main': '$6 / sq ft', category: 'floor' });
  expect(await textOf('content/options/ceiling-board/elm-boards.md')).toContain('maker: A yard');
  expect(await textOf()).toContain('elm-boards');
  await writeFile(join(at.dir, study), room);
});

it('asks what an allowance covers, and says nothing of it beforehand', async () => {
  const { text } = await ask('GET', '/desk/add.html');
  const boxes = text.match(/<input type="checkbox" name="covers"[^>]*>/gu) ?? [];
  expect(boxes.length).toBe(4);
  expect(boxes.filter((box) => /checked/u.test(box))).toEqual([]);
  const form = await formOf('/desk/add.html', 'new-allowance');
  const { headers } = await send(form, { name: 'Railing', amount: '$9,000', categories: 'floor' });
  expect(plain((await ask('GET', String(headers['location']))).text)).toContain(
    "Not done.'Covers': tick one at least.",
  );
});

it('says of its fields whole sentences, and what one looks like once', async () => {
  const categories = await readdir(join(at.dir, 'content/categories'));
  const of = categories.map((name) => `/desk/add.html?category=${name.replace(/\.md$/u, '')}`);
  const pages = ['/desk/walk.html', '/desk/agree.html', '/rooms/study.html', ...of];
  const said = new Set<string>();
  for (const page of pages)
    for (const [, words = ''] of (await ask('GET', page)).text.matchAll(/class="desk-hint">([^<]+)</gu))
      said.add(plain(words).trim());
  said.delete('(optional)');
  expect(said.size).toBeGreaterThan(20);
  // What another option of the category says, where there is one.
  expect([...said]).toEqual(expect.arrayContaining(['For example 5 1/8".', "For example 8', 10', 12'."]));
  expect([...said].filter((words) => !/^\p{Lu}.*\.$/u.test(words))).toEqual([]);
  expect(
    [...said].filter((words) => (words.match(/such as|for example/giu)?.length ?? 0) > 1 && !/lump sum/u.test(words)),
  ).toEqual([]);
});
