/** Takes the pictures in docs/ anew from the demo's book in _site/ (`npm run book` first): those of the README, and of those in docs/pages/ that show
 *  a page before and after the right side. What a page was before is kept as it is. Wants Chromium and poppler. */
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { execa } from 'execa';
import type { Browser } from 'playwright-core';
import { openBrowser } from '../test/browser/open-browser.js';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const site = join(root, '_site');
const docs = join(root, 'docs');

/** Where the right side of a picture lies, in its pixels, and how wide a page it shows. */
const sides = {
  desk: { picture: [1480, 600], left: 746, top: 8, wide: 726, high: 554, of: 1440 },
  phone: { picture: [820, 873], left: 416, top: 8, wide: 396, high: 857, of: 390 },
} as const;
type Side = keyof typeof sides;

const beforeAndAfter: readonly (readonly [picture: string, page: string, side: Side, look?: 'dark'])[] = [
  ['start', 'index', 'desk'],
  ['start-dark', 'index', 'desk', 'dark'],
  ['room', 'rooms/great-room', 'desk'],
  ['room-phone', 'rooms/great-room', 'phone'],
  ['choice', 'choices/great-room/stone-facing/breast', 'desk'],
  ['money', 'money', 'desk'],
  ['calendar', 'calendar', 'desk'],
  ['house', 'house', 'desk'],
  ['cautions', 'cautions', 'desk'],
  ['schedule', 'finish-schedule', 'desk'],
];

const browser = await openBrowser();
const work = await mkdtemp(join(tmpdir(), 'bookmatch-pictures-'));
try {
  for (const [picture, page, side, look] of beforeAndAfter) await renew(picture, page, side, look);
  await shoot('index', 1440, 1000, join(docs, 'start-page.png'), 0.75);
  await shoot('rooms/great-room', 1440, 1000, join(docs, 'room-page.png'), 0.75);
  await printed('101 Great room', join(docs, 'printed-room.png'));
} finally {
  await browser.close();
  await rm(work, { recursive: true, force: true });
}

type Context = NonNullable<Parameters<Browser['newContext']>[0]>;

/** A page as high as asked, `scale` times as large; without a path as the bytes of a PNG. */
async function shoot(page: string, width: number, height: number, path: string, scale: number, more: Context = {}) {
  const context = await browser.newContext({ viewport: { width, height }, deviceScaleFactor: scale, ...more });
  const tab = await context.newPage();
  await tab.goto(pathToFileURL(join(site, 'book', `${page}.html`)).href);
  await tab.screenshot({ path, clip: { x: 0, y: 0, width, height } });
  const tall = await tab.evaluate(() => document.documentElement.scrollHeight);
  console.log(`${page}  ${tall} pixels high at ${width}`);
  await context.close();
}

async function renew(picture: string, page: string, side: Side, look: 'light' | 'dark' = 'light'): Promise<void> {
  const { picture: size, left, top, wide, high, of } = sides[side];
  const after = join(work, `${picture}.png`);
  await shoot(page, of, Math.ceil((high * of) / wide), after, wide / of, { colorScheme: look });
  const file = join(docs, 'pages', `${picture}.jpg`);
  const at = `position:absolute;left:${left}px;top:${top}px;width:${wide}px;height:${high}px;object-fit:cover;object-position:top`;
  await compose(
    size,
    `<img src="${await dataOf(file, 'jpeg')}"><img style="${at}" src="${await dataOf(after, 'png')}">`,
    { path: file, type: 'jpeg', quality: 62 },
  );
}

/** The first two sheets on which the book prints that room, side by side. */
async function printed(room: string, path: string): Promise<void> {
  const pdf = join(site, 'book.pdf');
  const { stdout } = await execa('pdftotext', ['-layout', pdf, '-']);
  const first = stdout.split('\f').findIndex((text) => text.trimStart().startsWith(room)) + 1;
  if (first === 0) throw new Error(`no sheet of ${pdf} begins with ${room}`);
  await execa('pdftoppm', ['-png', '-r', '130', '-f', `${first}`, '-l', `${first + 1}`, pdf, join(work, 'sheet')]);
  const sheets = (await readdir(work)).filter((name) => name.startsWith('sheet')).sort();
  const images = await Promise.all(sheets.map((name) => dataOf(join(work, name), 'png')));
  const style = 'width:534px;box-sizing:border-box;border:1px solid #bbb;position:absolute;top:0';
  const html = images.map((data, index) => `<img style="${style};left:${index * 546}px" src="${data}">`).join('');
  await compose([1080, 691], html, { path, type: 'png' });
}

async function compose(
  [width, height]: readonly [number, number],
  html: string,
  screenshot: { readonly path: string; readonly type: 'jpeg' | 'png'; readonly quality?: number },
): Promise<void> {
  const context = await browser.newContext({ viewport: { width, height } });
  const tab = await context.newPage();
  await tab.setContent(`<body style="margin:0">${html}`);
  await tab.screenshot(screenshot);
  await context.close();
}

async function dataOf(path: string, type: 'jpeg' | 'png'): Promise<string> {
  return `data:image/${type};base64,${(await readFile(path)).toString('base64')}`;
}
