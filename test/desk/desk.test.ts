import { lstat, rename, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/main.js';
import { makeConsole } from '../cli/make-console.js';
import { study, visitedDesk } from './small-house.js';
import { plain, type Answered } from './visit.js';

const at = visitedDesk();
const { ask, formOf, send, textOf } = at;

async function save(text: string): Promise<Answered> {
  return send(await formOf(`/desk/record.html?path=${study}`, 'save'), { text });
}

describe('a desk', () => {
  it('has every page of the book, with its safeguards, and nothing of the folder', async () => {
    const { status, headers, text } = await ask('GET', '/rooms/study.html');
    expect(status).toBe(200);
    expect(String(headers['content-security-policy'])).toContain("script-src 'self'");
    for (const words of ["default-src 'none'", "form-action 'self'", "base-uri 'none'", "frame-ancestors 'none'"])
      expect(String(headers['content-security-policy'])).toContain(words);
    expect(headers).toMatchObject({
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'same-origin',
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-resource-policy': 'same-origin',
      'cache-control': 'no-store',
    });
    expect(at.own.cookie).toMatch(/^desk-\d+=[\w-]{32}$/u);
    expect(text).toContain('Edit content/rooms/study.md');
    for (const path of [
      '/content/house.md',
      '/desk/assets/nothing.css',
      '/assets/../content/house.md',
      '/snapshot.json',
    ])
      expect((await ask('GET', path)).status, path).toBeGreaterThanOrEqual(400);
  });

  it('saves a record as it was written, keeps the last sound pages beside its problems, and takes it back', async () => {
    const before = await textOf();
    const wrong = before.replace(/^level: .*$/mu, 'level: nowhere');
    expect(wrong).not.toBe(before);
    expect((await save(wrong)).status).toBe(303);
    expect(await textOf()).toBe(wrong);
    expect((await ask('GET', `/desk/record.html?path=${study}`)).text).toContain('nowhere');
    const room = await ask('GET', '/rooms/study.html');
    expect(room.status).toBe(200);
    expect(room.text).toContain('what you see is made of those before');
    await send(await formOf('/desk/index.html', 'undo'));
    expect(await textOf()).toBe(before);
    expect((await ask('GET', '/rooms/study.html')).text).toContain('as the records are');
  });

  it('never writes over what changed meanwhile: both are shown', async () => {
    const before = await textOf();
    const form = await formOf(`/desk/record.html?path=${study}`, 'save');
    const theirs = `${before}\nWritten in an editor.\n`;
    await writeFile(join(at.dir, study), theirs);
    const answer = await send(form, { text: `${before}\nWritten at the desk.\n` });
    expect(answer.status).toBe(409);
    expect(answer.text).toContain('Written in an editor.');
    expect(answer.text).toContain('Written at the desk.');
    expect(await textOf()).toBe(theirs);
    await writeFile(join(at.dir, study), before);
  });

  it('shows line by line what differs from what changed meanwhile', async () => {
    const before = await textOf();
    const form = await formOf(`/desk/record.html?path=${study}`, 'save');
    await writeFile(join(at.dir, study), `${before}\nFrom an editor.\n`);
    const { status, text } = await send(form, { text: `${before}\nFrom the desk.\n` });
    expect(status).toBe(409);
    expect(text).toMatch(/line-gone[^\n]*-From an editor\./u);
    expect(text).toMatch(/line-new[^\n]*\+From the desk\./u);
    await writeFile(join(at.dir, study), before);
  });

  it('answers a form that is too long with a page, once all of it was sent', async () => {
    const body = `text=${'x'.repeat(5_000_000)}`;
    const { status, text } = await ask('POST', '/desk/do', { body });
    expect([status, text.includes('The form is too large.'), text.includes('To the desk')]).toEqual([413, true, true]);
  });

  it('writes no file but a record that there is', async () => {
    for (const path of ['../x.md', 'content/new.md', '/etc/hosts', 'package.json', 'content/rooms/../house.md']) {
      const form = await formOf(`/desk/record.html?path=${study}`, 'save');
      const { text } = await send(form, { path, text: 'x' });
      expect(text).not.toContain('Saved');
      await expect(stat(join(at.dir, 'content/new.md'))).rejects.toThrow();
    }
  });

  it('loses none of fifty who save at once: one of them writes, the others are told', async () => {
    const before = await textOf();
    const forms = await Promise.all(
      Array.from({ length: 50 }, () => formOf(`/desk/record.html?path=${study}`, 'save')),
    );
    const answers = await Promise.all(forms.map((form, i) => send(form, { text: `${before}\nBy ${i}.\n` })));
    expect(answers.filter(({ status }) => status === 303)).toHaveLength(1);
    expect(answers.filter(({ status }) => status === 409)).toHaveLength(49);
    expect(await textOf()).toBe(`${before}\nBy ${answers.findIndex(({ status }) => status === 303)}.\n`);
    await writeFile(join(at.dir, study), before);
  });

  it('adds a record by the command that a person would type, and tells what it said', async () => {
    const form = await formOf('/desk/add.html', 'new-trade');
    expect((await send(form, { name: '--house=/tmp', contact: 'site office' })).status).toBe(303);
    const said = (await ask('GET', '/desk/add.html')).text;
    expect(said).toContain('desk-said');
    const good = await formOf('/desk/add.html', 'new-trade');
    await send(good, { name: 'Glazing', contact: 'glass shop' });
    expect((await ask('GET', '/desk/add.html')).text).toContain('content/trades/glazing.md');
    expect(await textOf('content/trades/glazing.md')).toContain('glass shop');
  });

  it('draws a walk, and says what is missing, and writes nothing', async () => {
    const form = await formOf('/desk/walk.html', 'walk');
    form.set('ask', 'draw');
    const { text, status } = await send(form, { walls: "east 14' 2\"\nsouth 10'\nwest 14'\nn 10'" });
    expect(status).toBe(200);
    expect(text).toContain('<svg');
    expect(text).toContain('2&quot; short going west');
    const open = { walls: "east 14'\n\nwindow wall: south 10'\nwest 13'\nnorth 10'" };
    const words = `At wall 3 (west 13'): a run of 14'-0" here, or 1'-0" less on wall 1 (east 14'), closes it.`;
    expect(plain((await send(form, open)).text)).toContain(words);
    const filled = { ...open, name: 'Loft as study', ceiling: "8'" };
    const walk = await formOf('/desk/walk.html', 'walk');
    const { headers } = await send(walk, filled);
    const refused = plain((await ask('GET', String(headers['location']))).text);
    expect(refused).toContain(words);
    expect(refused).toContain("'Walls, clockwise, one on a line': the walls do not close");
    expect((await send(form, { walls: 'up 3' })).text).toContain('which way it goes cannot be told');
  });

  it('adds a room that was walked', async () => {
    const form = await formOf('/desk/walk.html', 'walk');
    const level = /<option value="([^"]+)"/u.exec((await ask('GET', '/desk/walk.html')).text)?.[1] ?? '';
    const walls = "east 14'\nsouth 10'\nwest 6'\nsouth 4'\nwest 8'\nnorth 14'";
    await send(form, { name: 'Loft as study', level, ceiling: "8'", walls });
    const record = await textOf('content/rooms/loft.md');
    expect(record).toContain('go: east');
    expect(record).toContain('south-2');
    expect((await ask('GET', '/rooms/loft.html')).status).toBe(200);
  });

  it('says in a sentence that its port is taken', async () => {
    let told = '';
    const terminal = makeConsole({ out: () => undefined, error: (text) => (told += text) });
    expect(await run(['desk', '--house', at.dir, '--port', new URL(at.desk.address).port], terminal)).toBe(2);
    expect(told).toContain('is taken: name another, or none');
  });

  it('tells a page that the records changed', async () => {
    const before = await textOf();
    const heard = new Promise<string>((resolve, reject) => {
      const { host, port } = new URL(at.desk.address);
      const asked = request(
        { host: '127.0.0.1', port, path: '/desk/changes', headers: { host, cookie: at.own.cookie } },
        (response) => {
          let text = '';
          response.setEncoding('utf8').on('data', (part: string) => {
            text += part;
            if (text.split('data:').length > 2) {
              resolve(text);
              asked.destroy();
            }
          });
        },
      );
      asked.on('error', reject);
      asked.end();
    });
    await new Promise((resolve) => setTimeout(resolve, 100));
    await writeFile(join(at.dir, study), `${before}\nSeen at once.\n`);
    const [first, second] = (await heard).match(/\d+/gu)!.map(Number);
    expect(second).toBeGreaterThan(first!);
    await writeFile(join(at.dir, study), before);
  });

  it('keeps what was written where the record is gone, too large or no text', async () => {
    const before = await textOf();
    const unsaved = async (text: string, why: string): Promise<void> => {
      const form = await formOf(`/desk/record.html?path=${study}`, 'save');
      const answer = await send(form, { text });
      expect(answer.status).toBe(409);
      expect(answer.text).toContain(why);
      expect(answer.text).toContain('worth keeping');
      expect(await textOf()).toBe(before);
    };
    await unsaved(`worth keeping${'x'.repeat(1_000_000)}`, '1.0 MB; a record has 1 MB at most');
    await unsaved('worth keeping \0', 'a character without meaning');
    const form = await formOf(`/desk/record.html?path=${study}`, 'save');
    await rm(join(at.dir, study));
    const gone = await send(form, { text: 'worth keeping' });
    expect([gone.status, gone.text.includes('worth keeping')]).toEqual([409, true]);
    expect((await ask('GET', `/desk/record.html?path=${study}`)).status).toBe(404);
    await writeFile(join(at.dir, study), before);
  });

  it('saves a record with a byte order mark, lines that end as elsewhere, and 900 kB as it was written', async () => {
    const before = await textOf();
    const crlf = `\uFEFF${before.replaceAll('\n', '\r\n')}\r\n${'Long. '.repeat(150_000)}\r\n`;
    await writeFile(join(at.dir, study), crlf);
    await save(`${crlf}More.\r\n`);
    expect((await textOf()) === `${crlf}More.\r\n`).toBe(true);
    await writeFile(join(at.dir, study), before);
  });

  it('writes through a link that stays inside the house', async () => {
    const before = await textOf();
    await rename(join(at.dir, study), join(at.dir, 'study-kept.md'));
    await symlink('../../study-kept.md', join(at.dir, study));
    await save(`${before}\nThrough the link.\n`);
    expect((await lstat(join(at.dir, study))).isSymbolicLink()).toBe(true);
    expect(await textOf('study-kept.md')).toContain('Through the link.');
    await rename(join(at.dir, 'study-kept.md'), join(at.dir, study));
    await writeFile(join(at.dir, study), before);
  });

  it('takes back what its form shows, and nothing that was done since', async () => {
    const before = await textOf();
    await save(`${before}\nFirst.\n`);
    const form = await formOf('/desk/index.html', 'undo');
    await save(`${before}\nSecond.\n`);
    await send(form);
    expect(await textOf()).toBe(`${before}\nSecond.\n`);
    expect((await ask('GET', '/desk/index.html')).text).toContain('What was done last is another by now');
    await send(await formOf('/desk/index.html', 'undo'));
    const twice = await formOf('/desk/index.html', 'undo');
    await Promise.all([send(twice), send(twice), send(twice)]);
    expect(await textOf()).toBe(before);
  });

  it('takes nothing back that was changed elsewhere since', async () => {
    const before = await textOf();
    await save(`${before}\nAt the desk.\n`);
    await writeFile(join(at.dir, study), `${before}\nIn an editor.\n`);
    await send(await formOf('/desk/index.html', 'undo'));
    expect(await textOf()).toBe(`${before}\nIn an editor.\n`);
    await writeFile(join(at.dir, study), before);
  });

  it('tells what was done on the page that it was done from, whichever page loads first', async () => {
    const before = await textOf();
    const form = await formOf(`/desk/record.html?path=${study}`, 'save');
    form.set('back', 'rooms/study.html');
    const { headers } = await send(form, { text: `${before}\nTold where it was done.\n` });
    expect((await ask('GET', '/index.html')).text).not.toContain('desk-said');
    const told = (await ask('GET', String(headers['location']))).text;
    expect(told.replaceAll(/<[^>]+>/gu, '')).toContain(`Saved ${study}`);
    expect(told).toContain(`href="/desk/record.html?path=${encodeURIComponent(study)}"`);
    expect((await ask('GET', String(headers['location']))).text).not.toContain('desk-said');
    await writeFile(join(at.dir, study), before);
  });

  it('chooses in the place that its form is of, and not where something else was chosen meanwhile', async () => {
    const before = await textOf();
    const choice = '/choices/study/ceiling-board/ceiling.html';
    const id = 'choose/study/ceiling-board/ceiling';
    const filled = { option: 'fir-tg-1x6', by: 'owner', on: '2026-04-20' };
    const moved = await formOf(choice, id);
    await send(moved, { ...filled, 'selection.room': 'elsewhere', 'selection.place': 'elsewhere' });
    expect(await textOf()).toContain('chosen: fir-tg-1x6');
    const [stale, other] = [await formOf(choice, id), await formOf(choice, id)];
    await send(other, { ...filled, option: 'open' });
    expect(await textOf()).not.toContain('chosen: fir-tg-1x6');
    const open = await textOf();
    const { headers } = await send(stale, { ...filled, option: 'none' });
    expect(await textOf()).toBe(open);
    expect((await ask('GET', String(headers['location']))).text).toContain('It is open meanwhile');
    await writeFile(join(at.dir, study), before);
  });

  it('lists what has nothing to compare yet too, and has its forms on the page of its room', async () => {
    const before = await textOf();
    await writeFile(join(at.dir, study), before.replace('[pine-shiplap-1x8, fir-tg-1x6]', '[pine-shiplap-1x8]'));
    const home = (await ask('GET', '/desk/index.html')).text.replaceAll(/<[^>]+>/gu, ' ').replaceAll(/\s+/gu, ' ');
    expect(home).toMatch(
      /Study: ceiling board, ceiling by [\d\w ]+(?: late)? Pine shiplap[^,]* alone to choose from/iu,
    );
    const room = '/rooms/study.html';
    const id = 'study/ceiling-board/ceiling';
    await send(await formOf(room, `consider/${id}`), { more: 'fir-tg-1x6' });
    expect(await textOf()).toMatch(/fir-tg-1x6/u);
    expect((await ask('GET', room)).text).not.toContain('nothing to compare yet');
    await writeFile(join(at.dir, study), before.replace('[pine-shiplap-1x8, fir-tg-1x6]', '[pine-shiplap-1x8]'));
    await send(await formOf(room, `choose/${id}`), { option: 'pine-shiplap-1x8', by: 'owner', on: '2026-04-20' });
    expect(await textOf()).toContain('chosen: pine-shiplap-1x8');
    await writeFile(join(at.dir, study), before);
  });

  it('considers one more option of the category in a place', async () => {
    const before = await textOf();
    const boards = 'content/options/ceiling-board';
    const third = (await textOf(`${boards}/fir-tg-1x6.md`)).replace(/^name: .*$/mu, 'name: Third board');
    await writeFile(join(at.dir, boards, 'third.md'), third);
    const choice = '/choices/study/ceiling-board/ceiling.html';
    const form = await formOf(choice, 'consider/study/ceiling-board/ceiling');
    await send(form, { more: 'third' });
    expect(await textOf()).toMatch(/- fir-tg-1x6\n\s+- third\n/u);
    const { text } = await ask('GET', choice);
    expect(text).toContain('name="option" value="third"');
    expect(text).not.toContain('Consider one more');
    await rm(join(at.dir, boards, 'third.md'));
    await writeFile(join(at.dir, study), before);
  });
});
