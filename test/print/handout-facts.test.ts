import { beforeAll, describe, expect, test } from 'vitest';
import { makeHandout, type Handout } from '../../src/handout/index.js';
import { makeHandoutPdf } from '../../src/print/index.js';
import { handoutFolders } from '../../src/site/index.js';
import { smallBook } from '../book/small-house.js';
import { pdfTexts } from '../handout/money-search.js';

/** What a PDF says beside its pages: facts, XMP, bookmarks, alternative texts, fields, attachments. */

const sum = '$7,319.41';
const people =
  'people:\n  - { role: owner, name: Ottoline Quux, contact: Ottoline, phone: 555-0101, mail: quux@example.com }\n' +
  '  - { role: builder, name: Pip Zed, phone: 555-0102 }\n';

/** The small house with a sum in every name that the facts of a PDF are made of, and people by their names. */
function handoutOf(rules = ''): Handout {
  const book = smallBook({
    'content/house.md': [
      ['name: Small House', `name: "Small House ${sum}"`],
      ['number: "1"', `number: "1 ${sum}"`],
      ['place: Anywhere', `place: "Anywhere ${sum}"`],
      [
        'people:\n  - { role: owner, name: The owner }\n  - { role: builder, name: The builder }\n',
        `${rules}${people}private: Xylophage\n`,
      ],
    ],
    'content/trades/carpentry.md': [
      ['name: Carpentry', `name: "Carpentry ${sum}"`],
      ["contact: Carpenter's foreman", `contact: "Foreman ${sum}"\nprivate: Xylophage`],
    ],
    'content/rooms/study.md': [
      ['name: Study', `name: "Study ${sum}"`],
      [
        '    chosen: pine\n',
        '    chosen: pine\n    chosen-on: 2026-03-02\n    chosen-by: Ottoline Quux\n    ordered: { on: 2026-03-04, option: pine, by: Pip Zed }\n',
      ],
    ],
  });
  const [trade] = book.trades;
  if (!trade) throw new Error('the small house has no trade');
  return makeHandout(book, trade);
}

describe('the PDF of a handout', () => {
  let texts: Map<string, string>;
  let named: Map<string, string>;
  beforeAll(async () => {
    texts = await pdfTexts((await makeHandoutPdf(handoutOf())).pdf);
    named = await pdfTexts((await makeHandoutPdf(handoutOf('handouts: { people: names }\n'))).pdf);
  }, 60_000);

  test('has facts, XMP and one attachment to look into', () => {
    expect([...texts.keys()]).toEqual(['pages', 'facts', 'metadata', 'strings', 'attachment handout.json']);
    expect(texts.get('metadata')).toContain('<x:xmpmeta');
    expect(texts.get('strings')).toContain('handout.json');
  });

  test('says in its facts whose part it is, without sums and by role', () => {
    const facts = texts.get('facts') ?? '';
    expect(facts).toMatch(/^Title: +Small House …: handout, Carpentry …$/mu);
    expect(facts).toMatch(/^Author: +The builder$/mu);
    expect(facts).toMatch(/^Subject: +Job …+, Anywhere …\. Not issued\. Records of 20 April 2026$/mu);
    expect(facts).toMatch(/^Keywords: +handout, Carpentry …, 06 20 00$/mu);
    expect(texts.get('metadata')).toContain('The builder');
  });

  test('has no sum, no name and no private word in any of them', () => {
    for (const [what, text] of texts)
      for (const secret of [/7,?319/u, /\$/u, /Ottoline|Quux|quux/u, /Pip|Zed/u, /555-0101/u, /Xylophage/u])
        expect(text, what).not.toMatch(secret);
  });

  test('has the names of those whom a trade calls where the house says so, and would be found out', () => {
    expect(named.get('facts')).toMatch(/^Author: +Pip Zed$/mu);
    expect(named.get('metadata')).toContain('Pip Zed');
    for (const [what, text] of named) expect(text, what).not.toMatch(/Ottoline|Quux|quux|7,?319/u);
  });
});

test('a handout has no index to search in and no data but what its pages say', async () => {
  const files = await handoutFolders([handoutOf()]);
  const others = [...files.keys()].filter((path) => !/\.html$|\/assets\/fonts\//u.test(path));
  expect(others.toSorted()).toEqual(['handout.js', 'style.css', 'theme.js'].map((name) => `carpentry/assets/${name}`));
  for (const [path, content] of files) {
    if (!path.endsWith('.html')) continue;
    expect(String(content), path).not.toMatch(/type="search"|minisearch|<script(?![^>]* src=)/u);
    expect(String(content), path).not.toMatch(/7,?319|Ottoline|Quux|Pip|Zed|Xylophage/u);
  }
});
