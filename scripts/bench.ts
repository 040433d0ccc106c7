import { execFileSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { cp, mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import Eleventy, { type UserConfig } from '@11ty/eleventy';
import type { Book } from '../src/core/book/index.js';
import { composeBook, loadHouse, recordsDigest, type LoadedHouse } from '../src/disk/load/index.js';
import { pageScript } from '../src/disk/program/index.js';
import { makeBookPdf } from '../src/print/index.js';
import { pdfJob } from '../src/print/set-pdf.js';
import { makeSheets } from '../src/print/sheets/index.js';
import { typeset } from '../src/print/typeset.js';
import { writeSite } from '../src/site/index.js';
import { packHouse } from '../src/try/index.js';
import { openBrowser } from '../test/browser/open-browser.js';
import { timeDesk } from './bench-desk.js';
import { timeGrowth } from './bench-growth.js';
import { rollUp } from './roll-up.js';

/** Times the demo house's way through the program. Machines differ and are noisy, so what counts are the ratios, each
 *  against a reference in the same run: bare Node doing nothing, bare Eleventy writing the same pages, bare Typst setting the same sheets. */
const day = '2026-04-20';
const scratch = await mkdtemp(join(tmpdir(), 'bookmatch-bench-'));

try {
  await benchCommands();
  const cold = await time(() => loadHouse('.'));
  const loaded = cold.result;
  const { book } = composeBook(loaded, day);
  if (!book) throw new Error('the demo house has errors; run: npm run bookmatch -- check');
  const roll = await best(10, () => composeBook(loaded, day));
  report('read and measure the records, first time', cold.ms);
  benchPricing(loaded);
  report(`compose the Book: ${book.selections.length} selections, best of 10`, roll);
  await benchSite(book);
  await benchPicks(loaded, book);
  await benchDesk();
  await benchPdf(book);
  await benchGrowth();
} finally {
  await rm(scratch, { recursive: true, force: true });
}

/** Commands of the built program, each a process of its own. */
async function benchCommands(): Promise<void> {
  const node = (...args: readonly string[]): unknown => execFileSync(process.execPath, args, { stdio: 'ignore' });
  const bare = await best(5, () => node('-e', '0'));
  const bookmatch = (...words: readonly string[]): unknown => node('dist/bookmatch.js', ...words);
  report('bookmatch --help', await best(5, () => bookmatch('--help')), bare, 'bare Node');
  for (const [name, from] of [
    ['a small house', 'test/cases/small-house'],
    ['the demo', '.'],
  ] as const) {
    const house = join(scratch, 'checked');
    await cp(join(from, 'content'), join(house, 'content'), { recursive: true });
    const check = (): unknown => bookmatch('check', '--house', house, '--on', day);
    const first = await best(3, () => {
      rmSync(join(house, '.bookmatch'), { recursive: true, force: true });
      check();
    });
    report(`bookmatch check, ${name}, for the first time`, first, bare, 'bare Node');
    report(`bookmatch check, ${name}, again`, await best(5, check), bare, 'bare Node');
    await rm(house, { recursive: true });
  }
}

/** Pricing alone, in one run: a house, and all choices of it one after the other, as a multiple of one house each. */
function benchPricing({ house: read }: LoadedHouse): void {
  const { records, measures } = read ?? {};
  if (!records || !measures) return;
  const { house, choices, count } = rollUp(records, measures, 10);
  report('price the house and its ledger, best of 10', house);
  const apart = house * count;
  report(`price each of ${count} choices with the whole house`, choices, apart, 'pricing the house anew for each');
}

async function benchSite(book: Book): Promise<void> {
  const out = join(scratch, 'site');
  const pages = await writeSite(book, out);
  const texts = await Promise.all(
    pages.map(async ({ path }) => ({ path, text: await readFile(join(out, path), 'utf8') })),
  );
  const ours = await best(3, () => writeSite(book, out));
  const bare = await best(3, () => writeBare(texts));
  const written = (await readdir(join(scratch, 'bare'), { recursive: true })).filter((name) => name.endsWith('.html'));
  if (written.length !== pages.length)
    throw new Error(`bare Eleventy wrote ${written.length} of ${pages.length} pages`);
  report(`${pages.length} pages`, ours, bare, 'bare Eleventy with the finished pages');
}

/** From a pick in a browser, of the page of all choices, to every figure on it: one place after the other, all of them staying picked. */
async function benchPicks({ house, sources }: LoadedHouse, book: Book): Promise<void> {
  if (!house) return;
  const out = join(scratch, 'tried');
  const packed = packHouse({ ...house, snapshot: recordsDigest(sources) }, book);
  const script = await pageScript();
  await writeSite(book, out, { trying: { house: packed, script } });
  const browser = await openBrowser();
  try {
    const page = await browser.newPage();
    await page.goto(pathToFileURL(join(out, 'book/try.html')).href);
    const places = page.locator('[data-try]:has(input:not(:disabled))');
    const first = await time(async () => {
      await places.nth(0).locator('input').nth(1).check();
      await page.locator('.try-sum strong').waitFor();
    });
    const zipped = (text: string): string => `${(gzipSync(text).length / 1024).toFixed(0)} kB`;
    report(
      `first pick: code of ${zipped(script)} and data of ${zipped(JSON.stringify(packed))} packed, read and run`,
      first.ms,
    );
    const throttle = await page.context().newCDPSession(page);
    for (const rate of [1, 4]) {
      await throttle.send('Emulation.setCPUThrottlingRate', { rate });
      // Each of the two picks others than the other.
      const { picks, parsed } = await places.evaluateAll(pickEach, rate === 1 ? [1, 21] : [21, 41]);
      report(
        `a pick and all figures, median of ${picks.length}${rate === 1 ? '' : `, processor at 1/${rate}`}`,
        middle(picks),
        middle(parsed),
        'parsing its data once',
      );
    }
  } finally {
    await browser.close();
  }
}

/** Runs in the page: picks in one place after the other, and between picks parses what the page has of the house. Milliseconds of each. */
function pickEach(groups: readonly Element[], [from = 0, to = 0]: readonly number[]) {
  const data = JSON.stringify(window.bookmatchHouse);
  const times = groups.slice(from, to).map((group) => {
    const started = performance.now();
    // A click is heard, and all that follows from it done, before it returns.
    group.querySelector<HTMLInputElement>('input:not(:checked)')?.click();
    const picked = performance.now();
    JSON.parse(data);
    return { pick: picked - started, parsed: performance.now() - picked };
  });
  return { picks: times.map(({ pick }) => pick), parsed: times.map(({ parsed }) => parsed) };
}

/** From what somebody does at a desk of the built program to the page that shows it right. */
async function benchDesk(): Promise<void> {
  const bare = await best(5, () => execFileSync(process.execPath, ['-e', '0'], { stdio: 'ignore' }));
  const house = join(scratch, 'at-desk');
  await cp('content', join(house, 'content'), { recursive: true });
  const { page, save, edited, choice } = await timeDesk(house, day, 'content/rooms/study.md', 25);
  report('desk: a page, nothing changed, median of 25', page, bare, 'bare Node');
  report('desk: a record saved, to its page, median of 25', save, bare, 'bare Node');
  report('desk: a record saved in an editor, to its page, median of 25', edited, bare, 'bare Node');
  report('desk: a choice, to its page, median of 25', choice, bare, 'bare Node');
}

async function writeBare(pages: readonly { path: string; text: string }[]): Promise<void> {
  const config = (eleventy: UserConfig): void => {
    eleventy.setQuietMode(true);
    eleventy.setTemplateFormats(['11ty.js']);
    eleventy.setUseGitIgnore(false);
    for (const { path, text } of pages) {
      eleventy.addTemplate(`${path}.11ty.js`, {
        data: () => ({ permalink: path, eleventyExcludeFromCollections: true }),
        render: () => text,
      });
    }
  };
  const input = await mkdtemp(join(scratch, 'input-'));
  const eleventy = new Eleventy(input, join(scratch, 'bare'), { quietMode: true, configPath: false, config });
  eleventy.disableLogger();
  await eleventy.write();
}

async function benchPdf(book: Book): Promise<void> {
  const ours = await best(3, () => makeBookPdf(book));
  const { sheets, kind } = pdfJob('book', makeSheets(book)).job;
  const bare = await best(3, () => typeset(sheets, kind));
  report('the printed book', ours, bare, 'bare Typst with the finished sheets');
}

/** Whether ten times the house takes ten times the time. */
async function benchGrowth(): Promise<void> {
  for await (const { what, exponent, runs } of timeGrowth(scratch, day)) {
    const each = runs.map(
      ({ selections, seconds, peakMegabytes }) =>
        `${selections} selections ${seconds.toFixed(1)} s, ${peakMegabytes.toFixed(0)} MB`,
    );
    console.log(`     n^${exponent.toFixed(2)}  ${what}: ${each.join('; ')}`);
  }
}

async function time<T>(run: () => T | Promise<T>): Promise<{ result: T; ms: number }> {
  const started = performance.now();
  const result = await run();
  return { result, ms: performance.now() - started };
}

function middle(numbers: readonly number[]): number {
  return numbers.toSorted((a, b) => a - b)[numbers.length >> 1] ?? NaN;
}

async function best(times: number, run: () => unknown): Promise<number> {
  let least = Infinity;
  for (let i = 0; i < times; i += 1) least = Math.min(least, (await time(run)).ms);
  return least;
}

function report(what: string, ms: number, reference?: number, name?: string): void {
  const ratio =
    reference === undefined ? '' : `  ${(ms / reference).toFixed(2)} × ${name} (${reference.toFixed(0)} ms)`;
  console.log(`${ms.toFixed(ms < 10 ? 1 : 0).padStart(6)} ms  ${what}${ratio}`);
}
