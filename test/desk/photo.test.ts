import { readdir, mkdir, rm, symlink, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { exif, jpeg, joined, png, secret, withSegments } from '../photo/samples.js';
import { visitedDesk } from './small-house.js';

const at = visitedDesk();
const { ask, formOf, send, textOf } = at;
const page = '/options/floor/oak.html';
const record = 'content/options/floor/oak.md';

let before = '';
beforeEach(async () => (before = await textOf(record)));
afterEach(async () => {
  await writeFile(join(at.dir, record), before);
  await rm(join(at.dir, 'photos'), { recursive: true, force: true });
});

const kept = (): Promise<readonly string[]> => readdir(join(at.dir, 'photos/floor')).catch(() => []);

interface Sent {
  readonly status: number;
  readonly location: string;
  readonly text: string;
}

/** Sends a form with a file as a browser does. */
async function upload(form: URLSearchParams, bytes: Uint8Array, name = 'IMG_2041.jpg'): Promise<Sent> {
  const parts = new FormData();
  for (const [key, value] of form) parts.append(key, value);
  parts.append('file', new Blob([new Uint8Array(bytes)]), name);
  const asBrowser = new Response(parts);
  return post(Buffer.from(await asBrowser.arrayBuffer()), asBrowser.headers.get('content-type') ?? '');
}

function post(body: Buffer, type: string, length = body.length): Promise<Sent> {
  const { host, port } = new URL(at.desk.address);
  const headers = {
    host,
    cookie: at.own.cookie,
    origin: `http://${host}`,
    'content-type': type,
    'content-length': length,
  };
  return new Promise((resolve, reject) => {
    const asked = request(
      { host: '127.0.0.1', port, method: 'POST', path: '/desk/do', headers, agent: false },
      (answer) => {
        let text = '';
        answer.setEncoding('utf8').on('data', (part: string) => (text += part));
        answer.on('end', () =>
          resolve({ status: answer.statusCode ?? 0, location: answer.headers.location ?? '', text }),
        );
      },
    );
    asked.on('error', reject);
    asked.end(body.subarray(0, length));
  });
}

async function add(bytes: Uint8Array, more: Readonly<Record<string, string>> = {}): Promise<string> {
  const form = await formOf(page, 'photo/floor/oak');
  form.set('shows', 'Three boards.');
  for (const [name, value] of Object.entries(more)) form.set(name, value);
  const { location } = await upload(form, bytes);
  return location === '' ? '' : (await ask('GET', location)).text;
}

describe('a photograph at the desk', () => {
  it('is kept under a name of its own, without where it was taken, and shown beside the swatch', async () => {
    await add(withSegments([0xe1, exif(6, 'II')]));
    const [file = '', ...others] = await kept();
    expect([file, others]).toEqual([expect.stringMatching(/^oak-[0-9a-f]{8}\.jpg$/u), []]);
    expect(await textOf(record)).toContain(
      `photo:\n  file: ${file}\n  shows: Three boards.\n  width: 8\n  height: 12\n`,
    );
    expect(await textOf(`photos/floor/${file}`)).not.toContain(secret);
    const shown = (await ask('GET', page)).text;
    expect(shown).toContain(
      `src="../../photos/floor/${file}" alt="Three boards." width="8" height="12" loading="lazy"`,
    );
  });

  it('is served as what it is, to be taken for nothing else, and no other file is', async () => {
    await add(jpeg);
    const [file = ''] = await kept();
    const path = `/photos/floor/${file}`;
    const { status, headers } = await ask('GET', path);
    expect([status, headers['content-type'], headers['x-content-type-options']]).toEqual([
      200,
      'image/jpeg',
      'nosniff',
    ]);
    await writeFile(join(at.dir, 'photos/floor/other.jpg'), jpeg);
    expect((await ask('GET', '/photos/floor/other.jpg')).status).toBe(404);
    await writeFile(join(at.dir, `photos/floor/${file}`), '<svg xmlns="http://www.w3.org/2000/svg"/>');
    expect((await ask('GET', path)).status).toBe(404);
    await rm(join(at.dir, `photos/floor/${file}`));
    await writeFile(join(at.dir, 'elsewhere.jpg'), jpeg);
    await symlink('../../elsewhere.jpg', join(at.dir, `photos/floor/${file}`));
    expect((await ask('GET', path)).status).toBe(200);
    await rm(join(at.dir, `photos/floor/${file}`));
    const outside = join(at.dir, '..', `outside-${file}`);
    await writeFile(outside, jpeg);
    await symlink(outside, join(at.dir, `photos/floor/${file}`));
    expect((await ask('GET', path)).status).toBe(404);
    await rm(outside);
  });

  it('takes the place of the one before, and what was there comes back', async () => {
    await add(jpeg);
    const [first = ''] = await kept();
    await add(png, { shows: 'Wet.' });
    const [second = '', ...others] = await kept();
    expect([second.endsWith('.png'), others]).toEqual([true, []]);
    await send(await formOf('/desk/index.html', 'undo'));
    expect(await kept()).toEqual([first]);
    expect(await textOf(record)).toContain(`file: ${first}`);
    await send(await formOf('/desk/index.html', 'undo'));
    expect(await kept()).toEqual([]);
    expect(await textOf(record)).toBe(before);
  });

  it('has other words without another file, is taken away, and comes back', async () => {
    await add(jpeg);
    const files = await kept();
    const form = await formOf(page, 'photo/floor/oak');
    await upload(form, new Uint8Array());
    expect(await textOf(record)).toContain('shows: Three boards.');
    form.set('shows', 'Four boards.');
    await upload(form, new Uint8Array());
    expect(await textOf(record)).toContain('shows: Four boards.');
    expect(await kept()).toEqual(files);
    await send(await formOf(page, 'no-photo/floor/oak'));
    expect([await kept(), await textOf(record)]).toEqual([[], before]);
    await send(await formOf('/desk/index.html', 'undo'));
    expect(await kept()).toEqual(files);
  });

  it.each([
    ['an SVG', joined('<svg xmlns="http://www.w3.org/2000/svg"/>'), 'may hold scripts'],
    ['a page named as a picture', joined('<html><script></script></html>'), 'may hold scripts'],
    ['text', joined('not a picture'), 'it is no JPEG, PNG or WebP; save it as'],
    ['half a JPEG', jpeg.subarray(0, 200), 'cut off or broken'],
    ['more than it may have', joined(jpeg, new Uint8Array(6_000_000)), '6 MB at most'],
  ])('is not %s: that is told, and nothing is written', async (_, bytes, why) => {
    expect(await add(bytes)).toContain(why);
    expect([await kept(), await textOf(record)]).toEqual([[], before]);
  });

  it('is refused unread where its form is longer than any, or broken', async () => {
    const type = 'multipart/form-data; boundary=x';
    const tooLong = await post(Buffer.alloc(10), type, 9_000_000).catch(() => undefined);
    expect(tooLong === undefined || tooLong.status === 413).toBe(true);
    expect((await post(Buffer.from('--y\r\n\r\nnothing'), type)).status).toBe(400);
    expect((await post(Buffer.from('nothing'), 'multipart/form-data')).status).toBe(400);
    expect((await post(Buffer.from('--x--\r\n'), type)).status).toBeGreaterThanOrEqual(400);
  });

  it('comes from the form alone: no path that is sent is read', async () => {
    await writeFile(join(at.dir, 'private.jpg'), jpeg);
    const form = await formOf(page, 'photo/floor/oak');
    const { headers } = await send(form, { shows: 'Another file.', file: join(at.dir, 'private.jpg') });
    expect((await ask('GET', String(headers['location']))).text).toContain('has no photograph: name a file');
    expect([await kept(), await textOf(record)]).toEqual([[], before]);
  });

  it('is of the option that its form is of, and not put over one that came meanwhile', async () => {
    const stale = await formOf(page, 'photo/floor/oak');
    expect(await add(jpeg, { category: '../..', slug: 'pine' })).toContain('Three boards.');
    const files = await kept();
    expect(files[0]).toMatch(/^oak-/u);
    stale.set('shows', 'Later.');
    await upload(stale, png);
    expect(await kept()).toEqual(files);
  });

  it('is never written through a link that leads out of the house', async () => {
    const outside = join(at.dir, '..', 'bookmatch-outside');
    await mkdir(outside, { recursive: true });
    await symlink(outside, join(at.dir, 'photos'));
    expect(await add(jpeg)).toContain('would lie outside of the house');
    expect(await readdir(outside)).toEqual([]);
    expect(await textOf(record)).toBe(before);
    await rm(outside, { recursive: true });
  });
});
