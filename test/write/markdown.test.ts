import { describe, expect, test } from 'vitest';
import { phraseHtml, proseHtml } from '../../src/write/index.js';

describe('proseHtml', () => {
  test('raw HTML stays text', () => {
    expect(proseHtml('<script>x</script>')).toBe('<p>&lt;script&gt;x&lt;/script&gt;</p>\n');
  });

  test('a link that runs a program is no link', () => {
    expect(proseHtml('[x](javascript:alert(1))')).not.toContain('href');
  });

  test.each(['../rooms/study.md', '#notes', 'data:text/html,x', 'file:///etc/hosts'])(
    'a link to %s would lead nowhere: it stays text',
    (to) => {
      expect(proseHtml(`[x](${to})`)).not.toContain('href');
    },
  );

  test('a link to the web tells it nothing of this book', () => {
    expect(proseHtml('[x](https://example.org/)')).toContain('<a href="https://example.org/" rel="noreferrer">x</a>');
  });

  test('pictures from elsewhere are not loaded', () => {
    expect(proseHtml('![y](https://example.org/y.png)')).not.toContain('<img');
  });

  test.each([
    ['# A', ['h3']],
    ['## A', ['h3']],
    ['# A\n## B\n# C', ['h3', 'h4', 'h3']],
    ['# A\n#### B\n##### C', ['h3', 'h4', 'h5']],
    ['### A\n# B', ['h3', 'h3']],
  ])('headings of %j go down one step at a time from h3', (text, tags) => {
    expect([...proseHtml(text).matchAll(/<(h\d)>/g)].map((match) => match[1])).toEqual(tags);
  });

  test('straight quotes become curly', () => {
    expect(phraseHtml('"so"')).toBe('“so”');
  });
});

test('marks for trades and builder are not shown; any other comment is shown as the text it is', () => {
  const html = proseHtml(
    'Seen. <!-- trades -->For them.<!-- /trades --> <!--builder-->Ours.<!-- /builder --> <!-- x -->',
  );
  expect(html).toContain('Seen. For them. Ours.');
  expect(html.match(/&lt;!--/gu)).toHaveLength(1);
});
