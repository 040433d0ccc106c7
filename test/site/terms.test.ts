import { describe, expect, test } from 'vitest';
import { explained, explainTerms, pageTerms, readGlossary } from '../../src/site/terms.js';

const terms = readGlossary(`# Words

- **Allowance**: money <set> aside in \`house.md\`.
- **Upgrade, credit**: what a choice adds, or takes off.
- **Lead time**: from the order to the site.
`);
const explain = (text: string): string => explainTerms(`<main>${text}</main>`, terms);
/** What is explained, in its order, as it stands. */
const said = (text: string): string[] =>
  [...explain(text).matchAll(/class="term"[^>]*>([^<]*)</gu)].map(([, at = '']) => at);

test('the glossary has every word that pages explain', () => {
  expect(
    pageTerms()
      .map(({ word }) => word)
      .toSorted(),
  ).toEqual([...explained].toSorted());
});

test('a head of several words explains each of them', () => {
  expect(terms.map(({ word }) => word)).toEqual(['allowance', 'upgrade', 'credit', 'lead time']);
});

describe('a term', () => {
  test('is explained where it first stands, with its meaning as title and behind the button', () => {
    expect(explain('<p>An allowance. One more allowance.</p>')).toBe(
      '<main><p>An <button type="button" class="term" popovertarget="term-allowance" title="money &lt;set&gt; aside in house.md.">' +
        'allowance</button>. One more allowance.</p><p id="term-allowance" class="term-words" popover><strong>Allowance</strong>: ' +
        'Money &lt;set&gt; aside in house.md.</p></main>',
    );
  });

  test('may begin a sentence or be several, and is a whole word', () => {
    expect(said('<p>Allowances, discredit, credit-note, lead times and an UPGRADE</p>')).toEqual([
      'Allowances',
      'lead times',
      'UPGRADE',
    ]);
  });

  test.each(['a', 'button', 'summary', 'label', 'h2', 'th', 'caption', 'code'])('is left alone in %s', (name) => {
    expect(said(`<div><${name}><b>allowance</b></${name}></div>`)).toEqual([]);
    expect(said(`<div><${name}>allowance</${name}><br>An allowance</div>`)).toEqual(['allowance']);
  });

  test('is left alone in what only the eye or the ear gets, in attributes and outside the page’s text', () => {
    expect(said('<p><span class="why for-the-ear">allowance</span><img alt="an allowance > a credit"></p>')).toEqual(
      [],
    );
    expect(said('<div aria-hidden="true"><svg><path d="M0 0"></path></svg><p>allowance</p></div>')).toEqual([]);
    expect(explainTerms('<nav>allowance</nav><main></main><footer>credit</footer>', terms)).toBe(
      '<nav>allowance</nav><main></main><footer>credit</footer>',
    );
  });

  test('is explained where it is seen rather than where it is folded away, though that stands first', () => {
    expect(explain('<details><p>credit</p></details><p>a credit</p>')).toContain('<p>a <button');
    expect(said('<details><p>a credit</p></details>')).toEqual(['credit']);
  });
});
