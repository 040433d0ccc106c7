import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { amountsOf, moneyInFiles, pdfTexts } from '../handout/money-search.js';
import { smallBook, smallFiles } from '../book/small-house.js';
import { bookmatch } from './command-line.js';
import { HouseUnderGit } from './house-under-git.js';

vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

/** Words of the house that nobody but the builder is to read, and some that trades are not. */
const secret = 'Xylophage';
const owner = 'Ottoline Quux';
const edits = {
  'content/house.md': [
    ['name: The owner }', `name: ${owner}, phone: 555-0199 }`],
    ['levels:\n', `private: ${secret} of the house.\nlevels:\n`],
  ],
  'content/options/floor/pine.md': [['---\n', `---\nprivate: ${secret} of the floor.\n`]],
} as const;

let house: HouseUnderGit;
let out: string;
beforeAll(() => {
  house = new HouseUnderGit();
  for (const { path, text } of smallFiles(edits)) house.write(path, text);
  house.commit(`${secret} is in the history as well`);
  out = mkdtempSync(join(tmpdir(), 'bookmatch-publish-'));
});
afterAll(() => {
  house.remove();
  rmSync(out, { recursive: true });
});

const publish = (dir: string, who: string) =>
  bookmatch(['publish', join(out, dir), '--for', who, '--house', house.dir, '--on', '2026-04-20']);

/** Files of a folder by their path. */
function filesIn(dir: string): Map<string, Uint8Array> {
  const root = join(out, dir);
  return new Map(
    readdirSync(root, { recursive: true, encoding: 'utf8' })
      .filter((path) => statSync(join(root, path)).isFile())
      .map((path) => [path, readFileSync(join(root, path))]),
  );
}

/** Every file to which pages lead, from one on: what they link to and what they load. A link to nothing is told. */
function crawl(
  dir: string,
  from: readonly string[],
): { readonly reached: ReadonlySet<string>; readonly broken: string[] } {
  const root = join(out, dir);
  const reached = new Set(from);
  const broken: string[] = [];
  for (const path of reached) {
    if (!path.endsWith('.html')) continue;
    const page = readFileSync(join(root, path), 'utf8');
    for (const [, , address = ''] of page.matchAll(/\s(href|src)="([^"]*)"/gu)) {
      if (/^(?:data|tel|mailto):|^#/u.test(address)) continue;
      const to = relative(root, resolve(root, dirname(path), decodeURI(address.replace(/[#?].*$/u, ''))));
      if (to.startsWith('..') || !existsSync(join(root, to))) broken.push(`${path}: ${address}`);
      else reached.add(to);
    }
  }
  return { reached, broken };
}

describe('what is published for the owners', () => {
  let files: Map<string, Uint8Array>;
  beforeAll(async () => {
    expect(await publish('owner', 'owner')).toMatchObject({ code: 0 });
    files = filesIn('owner');
  });

  test('is the book, its PDF and the change orders', () => {
    expect(readdirSync(join(out, 'owner')).toSorted()).toEqual([
      '.bookmatch-output',
      'book',
      'book.pdf',
      'change-orders',
    ]);
    expect(String(files.get('book/money.html'))).toContain('$100,000');
  });

  test('leads nowhere else, and nothing in it is hidden from who reads', () => {
    const { reached, broken } = crawl('owner', ['book/index.html']);
    expect(broken).toEqual([]);
    const pages = [...files.keys()].filter((path) => path.endsWith('.html'));
    expect(pages.filter((path) => !reached.has(path))).toEqual([]);
    expect(reached).toContain('book.pdf');
  });

  test('has no record, no history, no private word, in pages, data and PDF', async () => {
    expect(
      [...files.keys()].filter((path) => /records?[/.]|\.md|\.git|comparison|book\.json|handout/u.test(path)),
    ).toEqual([]);
    for (const [path, bytes] of files) {
      const text = Buffer.from(bytes).toString('latin1');
      expect(text.includes(secret), path).toBe(false);
      expect(/^(?:---\n|[a-z-]+: .*\n){3}/mu.test(path.endsWith('.html') ? text : ''), path).toBe(false);
    }
    const texts = await pdfTexts(files.get('book.pdf') ?? new Uint8Array());
    for (const [what, text] of texts) expect(text.includes(secret), what).toBe(false);
    const attached = JSON.parse(texts.get('attachment book.json') ?? '{}') as { sources?: unknown };
    expect(attached.sources).toEqual([]);
  });
});

describe.each([
  ['trades', ['carpentry', 'current', 'drywall']],
  ['carpentry', ['carpentry']],
])('what is published for %s', (who, folders) => {
  let files: Map<string, Uint8Array>;
  beforeAll(async () => {
    expect(await publish(who, who)).toMatchObject({ code: 0 });
    files = filesIn(who);
  });

  test('is handouts alone', () => {
    expect(readdirSync(join(out, who)).toSorted()).toEqual(['.bookmatch-output', 'handout']);
    const found = readdirSync(join(out, who, 'handout')).filter((name) => !name.startsWith('.'));
    expect(found.filter((name) => !folders.includes(name))).toEqual([]);
    expect(found).toContain('carpentry');
  });

  test('leads nowhere else', () => {
    const begins = [...files.keys()].filter((path) => path.endsWith('/index.html'));
    const { reached, broken } = crawl(who, begins);
    expect(broken).toEqual([]);
    const unreached = [...files.keys()].filter((path) => /\.(?:html|pdf)$/u.test(path) && !reached.has(path));
    expect(unreached).toEqual([]);
  });

  test('has no money, no owner and no private word, in any byte', async () => {
    const book = smallBook(edits);
    expect(await moneyInFiles(files, amountsOf(book))).toEqual([]);
    for (const [path, bytes] of files) {
      const texts = path.endsWith('.pdf')
        ? [...(await pdfTexts(bytes)).values()]
        : [Buffer.from(bytes).toString('utf8')];
      for (const text of texts) expect(/Xylophage|Ottoline|Quux|555-0199/u.test(text), path).toBe(false);
    }
  });
});

test('a folder is replaced as a whole, by what another audience may see too, and left as it was when records have an error', async () => {
  await publish('same', 'owner');
  expect((await publish('same', 'carpentry')).code).toBe(0);
  expect(readdirSync(join(out, 'same')).toSorted()).toEqual(['.bookmatch-output', 'handout']);
  const before = filesIn('same');
  const study = house.read('content/rooms/study.md');
  house.write('content/rooms/study.md', study.replace('name: Study', 'name: Study of $777.17'));
  expect((await publish('same', 'owner')).code).toBe(1);
  house.write('content/rooms/study.md', study);
  expect([...filesIn('same').keys()]).toEqual([...before.keys()]);
  expect(readdirSync(out).filter((name) => name.startsWith('.'))).toEqual([]);
});

test('a folder of other files, and an audience that there is not, are wrong usage', async () => {
  writeFileSync(join(out, 'mine.txt'), 'kept');
  expect(await bookmatch(['publish', out, '--for', 'trades', '--house', house.dir])).toMatchObject({ code: 2 });
  expect(readFileSync(join(out, 'mine.txt'), 'utf8')).toBe('kept');
  const { code, said } = await publish('none', 'public');
  expect(code).toBe(2);
  expect(said).toContain('--for public: write one of owner, trades, carpentry');
  expect(existsSync(join(out, 'none'))).toBe(false);
});
