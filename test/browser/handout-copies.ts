import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:https';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import forge from 'node-forge';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { makeHandout, type Handout } from '../../src/handout/index.js';
import type { Sieved } from '../../src/sheet/index.js';
import { currentImages, handoutFolders } from '../../src/site/index.js';
import { writeTree } from '../../src/disk/store/index.js';
import { demoBook } from '../demo-house.js';
import { makeCertificate } from '../signoff/make-certificate.js';
import { openBrowser } from './open-browser.js';
import { htmlFiles } from './site-files.js';

/** Copies of handouts on a disk, and the site that they ask which issue is current. */
export interface Copies {
  /** Pages of one copy. */
  readonly pages: readonly string[];
  /** Of the mason, as issued or not. */
  readonly handoutAt: (number: number | undefined, digest?: string) => Handout;
  /** What the site has for the mason of the demo's job from now on. */
  readonly answerWith: (image: string | undefined) => void;
  /** What the site was asked for in the visit that is on, and by whom. */
  readonly asked: () => readonly string[];
  readonly folderOf: (name: Copy) => string;
  readonly url: (name: Copy, page?: string) => string;
  readonly visit: (options: BrowserContextOptions, look: (page: Page) => Promise<void>) => Promise<void>;
  readonly close: () => Promise<void>;
}

const issueOf = (number: number, date: string) =>
  ({ number, purpose: 'construction', date, digest: String(number).repeat(64) }) as const;

/** What a site has for a handout: nothing while it is not issued. */
export const imageOf = (handout: Handout): string | undefined => [...currentImages([handout]).values()][0];

/** `since-2`: of records that changed since issue 2. */
export type Copy = 'issue-2' | 'records' | 'since-2' | 'other-job' | 'no-site' | 'carpentry';

export async function openCopies(...names: readonly Copy[]): Promise<Copies> {
  const browser = await openBrowser();
  let asked: string[] = [];
  let answer: string | undefined;
  const { certificate, key } = makeCertificate('localhost');
  const server = createServer(
    { cert: forge.pki.certificateToPem(certificate), key: forge.pki.privateKeyToPem(key) },
    (request, response) => {
      asked.push(`${request.url ?? ''} ${request.headers.referer ?? 'no referrer'}`);
      if (answer === undefined || request.url !== '/larch/handout/current/2614/masonry.svg')
        return void response.writeHead(404).end();
      response.writeHead(200, { 'content-type': 'image/svg+xml' }).end(answer);
    },
  );
  await new Promise<void>((done) => server.listen(0, 'localhost', done));
  const site = `https://localhost:${(server.address() as AddressInfo).port}/larch`;
  const book = await demoBook('2026-04-23');
  const trade = book.trades.find(({ slug }) => slug === 'masonry');
  const carpentry = book.trades.find(({ slug }) => slug === 'finish-carpentry');
  if (!trade || !carpentry) throw new Error('the demo house has no masonry or no carpentry');
  const sited = { ...book, house: { ...book.house, site } };
  const handoutAt = (number: number | undefined, digest?: string): Handout => {
    if (number === undefined) return makeHandout(sited, trade);
    const stamp = issueOf(number, `2026-0${number + 2}-20`);
    return makeHandout(sited, trade, { stamp: { ...stamp, digest: digest ?? stamp.digest } });
  };

  const folder = mkdtempSync(join(tmpdir(), 'bookmatch-handout-'));
  const write = async (name: string, handout: Handout): Promise<void> => {
    const files = [...(await handoutFolders([handout]))].map(
      ([path, content]) => [path.split('/').slice(1).join('/'), content] as const,
    );
    await writeTree(join(folder, name), new Map(files));
  };
  const other = handoutAt(2);
  const makers: Readonly<Record<Copy, () => Handout>> = {
    'issue-2': () => handoutAt(2),
    records: () => handoutAt(undefined),
    'since-2': () => ({
      ...handoutAt(undefined),
      changes: { since: { number: 2, date: '2026-04-20' as Sieved }, rooms: [], products: [] },
    }),
    'other-job': () => ({ ...other, cover: { ...other.cover, job: '9999' as Sieved } }),
    'no-site': () => makeHandout(book, trade, { stamp: issueOf(2, '2026-04-20') }),
    carpentry: () => makeHandout(book, carpentry),
  };
  for (const name of names) await write(name, makers[name]());

  return {
    pages: htmlFiles(join(folder, 'issue-2')),
    handoutAt,
    answerWith: (image) => {
      answer = image;
    },
    asked: () => asked,
    folderOf: (name) => join(folder, name),
    url: (name, page = 'index.html') => pathToFileURL(join(folder, name, page)).href,
    visit: async (options, look) => {
      const context = await browser.newContext({ ignoreHTTPSErrors: true, ...options });
      asked = [];
      try {
        await look(await context.newPage());
      } finally {
        await context.close();
      }
    },
    close: async () => {
      await browser.close();
      await new Promise((done) => server.close(done));
      rmSync(folder, { recursive: true });
    },
  };
}
