import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { extname, join, sep } from 'node:path';
import { assetCopies, photoFile, tryScript } from '../site/index.js';
import { capital } from '../base/units/index.js';
import { lastIssue } from '../core/book/index.js';
import { photoPath } from '../core/records/index.js';
import { readPhotoFile } from '../disk/store/index.js';
import { photoTypes } from '../photo/index.js';
import { pageScript, programPath } from '../disk/program/index.js';
import type { Act } from './act.js';
import type { Answer, BesideDesk } from './answer.js';
import { cookieName, cookieOf, isKey, refusal, safeguards, type Asked, type Own } from './guard.js';
import { addPage, agreePage, slipPage } from './form-pages.js';
import { plainPage, type DeskContext } from './frame.js';
import { readPosted, swallow, type Posted } from './posted.js';
import { homePage } from './home-page.js';
import { deskAnswers, deskPaths } from './paths.js';
import { paperAt, papersOf } from './papers.js';
import { noRecordWords, recordPage } from './record-page.js';
import { saidHtml, type Said } from './said.js';
import { sincePage } from './since-page.js';
import { walkedHtml, walkPage } from './walk-page.js';
import { inLocaleOf, type Standing, type Watched } from './standing.js';
import { newSecret, type DeskStart } from './start.js';

/** What a desk works on, and how. */
export interface DeskHouse {
  readonly dir: string;
  readonly watched: Watched;
  readonly act: Act;
  /** What is printed, and what trades are given. */
  readonly beside: BesideDesk;
  readonly start: DeskStart;
}

export interface Served {
  /** The address that opens it, with its key. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Serves a house's book and its desk to this machine alone. `ports`: the first that is free of them; 0 is
 *  any. Rejects where all are taken. */
export async function serveDesk(
  { dir, watched, act, beside, start }: DeskHouse,
  ports: readonly number[],
): Promise<Served> {
  const key = newSecret();
  const { secret } = start;
  const streams = new Set<ServerResponse>();
  let own: Own = { host: '', key };
  // By the address that a form leads back to: a page in another window that loads itself meanwhile does not take its words.
  const saids = new Map<string, Said>();
  const takeSaid = ({ pathname, search }: URL): Said | undefined => {
    const words = saids.get(pathname + search);
    saids.delete(pathname + search);
    return words;
  };
  const server = createServer((request, response) => {
    void answerFor(request)
      .catch(() => page(500, plainPage('Something went wrong', 'Look at what the records say now before you go on.')))
      .then((answer) => (answer === 'stream' ? stream(response) : send(response, answer, request.method === 'HEAD')));
  });
  const answerFor = async (request: IncomingMessage): Promise<Answer | 'stream'> => {
    const asked = askedBy(request);
    const refused = refusal(asked, own);
    if (refused) {
      // A browser shows no answer to what it is still sending.
      if (refused.status === 413) await swallow(request);
      return page(refused.status, plainPage('Not answered', `${capital(refused.why)}.`));
    }
    const url = new URL(asked.target, `http://${own.host}`);
    const given = url.searchParams.get('key');
    if (given !== null && isKey(given, own) && asked.method !== 'POST')
      return { ...redirect('/index.html'), headers: { location: '/index.html', 'set-cookie': cookies(own, start) } };
    if (!isKey(cookieOf(asked.headers['cookie'], own), own))
      return page(
        403,
        plainPage('Not opened yet', 'Open the address that the terminal prints: it has the key of this desk.', true),
      );
    if (asked.method !== 'POST') return url.pathname === `/${deskAnswers.changes}` ? 'stream' : shown(url);
    if (url.pathname !== '/desk/do') return page(404, plainPage('No such page', 'Forms go to the desk.'));
    const sent = await readPosted(request);
    if (!sent) return page(400, plainPage('Not taken', 'The form did not come whole. Load its page again.'));
    return posted(sent);
  };
  const context = async (url: URL): Promise<DeskContext> => {
    const words = takeSaid(url);
    const undo = act.lastDone();
    const standing = await watched.refresh();
    return { standing, start, ...(words && { said: words }), ...(undo !== undefined && { undo }) };
  };
  const shown = async (url: URL): Promise<Answer> => {
    const path = decodeURIComponent(url.pathname.slice(1)) || 'index.html';
    // What proves the forms of this start: a page of an earlier one goes on with it.
    if (path === deskAnswers.here)
      return { status: 200, type: 'text/plain; charset=utf-8', body: `${start.house} ${secret}` };
    if (path.startsWith('desk/') && path.endsWith('.html')) {
      const has = await context(url);
      const html = await deskPageAt(path, url, has);
      if (html !== undefined) return page(200, html);
      const name = url.searchParams.get('path');
      return path === deskPaths.record && name !== null ? noRecord(name, has.standing) : missing();
    }
    const file = (await assetAt(path)) ?? (await photoAt(dir, path, watched.now())) ?? (await paperAt(dir, path));
    if (file) return file;
    const text = (await watched.refresh()).file(path);
    if (text === undefined) return path === 'index.html' ? redirect(`/${deskPaths.home}`) : besideAt(path);
    if (!path.endsWith('.html')) return { status: 200, type: typeOf(path), body: text };
    const words = takeSaid(url);
    // Words may hold what `replace` would take for signs of its own.
    const said = words && inLocaleOf(watched.now(), () => saidHtml(words, { secret, back: path }));
    return page(200, said === undefined ? text : text.replace(place, () => said));
  };
  const besideAt = async (path: string): Promise<Answer> => {
    const made = await beside(path, watched.now().number);
    if (made === undefined) return missing();
    if (typeof made !== 'string' && 'why' in made) return page(409, plainPage('Not made', made.why));
    return { status: 200, type: typeOf(path), body: made };
  };
  const deskPageAt = async (path: string, url: URL, has: DeskContext): Promise<string | undefined> => {
    switch (path) {
      case deskPaths.home:
        return homePage(has);
      case deskPaths.add:
        return addPage(has, url.searchParams.get('category'));
      case deskPaths.walk:
        return walkPage(has);
      case deskPaths.slip:
        return slipPage(has);
      case deskPaths.agree: {
        const { changed, difference } = await act.unrecorded();
        return agreePage({ ...has, ...(changed && { changed }) }, { difference, papers: await papersOf(dir) });
      }
      case deskPaths.since: {
        const issue = has.standing.view && lastIssue(has.standing.view.book);
        return sincePage(has, issue && (await act.since(issue.number)));
      }
      case deskPaths.record:
        return recordPage(url.searchParams.get('path') ?? '', has);
      default:
        return undefined;
    }
  };
  const posted = async ({ form, file }: Posted): Promise<Answer> => {
    if (!isKey(form.get('secret') ?? '', { ...own, key: secret }))
      return page(
        403,
        plainPage(
          'Not taken',
          'The form was not made by this desk, or by an earlier start of it. Load its page again.',
        ),
      );
    if (form.get('ask') === 'draw') return page(200, walkedHtml(form.get('walls') ?? '', watched.now()));
    const done = await act.perform(form, file);
    const standing = await watched.refresh();
    if (done.page) {
      const has = { standing, start, said: done.said };
      const html =
        done.page.is === 'record'
          ? recordPage(done.page.path, has, done.page.unsaved)
          : slipPage(has, done.page.slip, done.page.takes);
      return page(done.said.isDone ? 200 : 409, html ?? plainPage('No such record', done.said.words));
    }
    const back = backOf(form, standing);
    saids.set(back, done.said);
    return redirect(back);
  };
  await listenAt(server, ports);
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('a desk listens at a port');
  own = { host: `127.0.0.1:${address.port}`, key };
  const stop = watched.onChange(({ number }) => {
    for (const one of streams) one.write(`data: ${number}\n\n`);
  });
  const stream = (response: ServerResponse): void => {
    response.writeHead(200, { ...safeguards, 'content-type': 'text/event-stream' });
    response.write(`data: ${watched.now().number}\n\n`);
    streams.add(response);
    response.on('close', () => streams.delete(response));
  };
  return {
    address: `http://${own.host}/?key=${key}`,
    close: async () => {
      stop();
      for (const one of streams) one.end();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      await act.ended();
      await watched.close();
    },
  };
}

/** As the strip has it, empty: where what was done is set in. */
const place = '<div data-said></div>';

async function listenAt(server: Server, [port = 0, ...others]: readonly number[]): Promise<void> {
  try {
    await listen(server, port);
  } catch (error) {
    if (others.length === 0) throw error;
    await listenAt(server, others);
  }
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', resolve);
  });
}

function askedBy({ method = '', url = '', headersDistinct, socket }: IncomingMessage): Asked {
  // One that is said twice is not what it should be, whichever of them is meant: node by itself would take the first `Host`.
  const single = Object.entries(headersDistinct).map(([name, values]) => [name, values?.join(', ')]);
  return {
    method,
    target: url,
    headers: Object.fromEntries(single) as Asked['headers'],
    from: socket.remoteAddress ?? '',
  };
}

/** The key; and, for the scripts of pages that an earlier start left open at another port, where the desk of the house is. */
function cookies(own: Own, { house }: DeskStart): readonly string[] {
  const [, port = ''] = own.host.split(':');
  return [
    `${cookieName(own)}=${own.key}; Path=/; HttpOnly; SameSite=Strict`,
    `desk-at-${house}=${port}; Path=/; SameSite=Strict`,
  ];
}

function redirect(location: string): Answer {
  return { status: 303, type: 'text/plain; charset=utf-8', body: '', headers: { location } };
}

/** Only to a page that there is. */
function backOf(form: URLSearchParams, standing: Standing): string {
  const back = form.get('back') ?? '';
  const path = form.get('path') ?? '';
  if (back === deskPaths.record) return `/${back}?path=${encodeURIComponent(path)}`;
  const [page = ''] = back.split('?');
  if (page === deskPaths.add && /^[\w./-]+\?category=[a-z0-9-]+$/u.test(back)) return `/${back}`;
  const isOwn = Object.values<string>(deskPaths).includes(back) || standing.file(back) !== undefined;
  return `/${isOwn ? back : deskPaths.home}`;
}

function page(status: number, body: string): Answer {
  return { status, type: 'text/html; charset=utf-8', body };
}

function noRecord(path: string, standing: Standing): Answer {
  return page(404, plainPage('No such record', noRecordWords(path, standing)));
}

function missing(): Answer {
  return page(404, plainPage('No such page', 'The book has no such page, or has it no longer.'));
}

function send(response: ServerResponse, { status, type, body, headers = {} }: Answer, isHead: boolean): void {
  response.writeHead(status, { ...safeguards, 'content-type': type, ...headers });
  response.end(isHead ? undefined : body);
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
  '.json': 'application/json',
  '.pdf': 'application/pdf',
};

function typeOf(path: string): string {
  return types[extname(path)] ?? 'application/octet-stream';
}

/** What lies beside the pages, from the program's own folders and from no other. */
async function assetAt(path: string): Promise<Answer | undefined> {
  if (path === tryScript) return { status: 200, type: typeOf(path), body: await pageScript() };
  const folders = { ...assetCopies(), [programPath('src/desk/assets')]: 'desk/assets' };
  for (const [from, to] of Object.entries(folders)) {
    if (path !== to && !path.startsWith(`${to}/`)) continue;
    const file = path === to ? from : join(from, path.slice(to.length + 1));
    if (file !== from && !file.startsWith(`${from}${sep}`)) continue;
    const body = await readFile(file).catch(() => undefined);
    if (body) return { status: 200, type: typeOf(path), body };
  }
  return undefined;
}

/** A photograph that an option of the book shows, and no other file; by what is in it, without what tells of its taking. */
async function photoAt(dir: string, path: string, { view }: Standing): Promise<Answer | undefined> {
  const shown = view?.book.options.find((option) => option.photo && photoFile(option, option.photo) === path);
  if (!shown?.photo) return undefined;
  const photo = await readPhotoFile(dir, photoPath(shown.source, shown.photo.file));
  return photo.ok ? { status: 200, type: photoTypes[photo.value.kind], body: photo.value.bytes } : undefined;
}
