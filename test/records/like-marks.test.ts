import { describe, expect, test } from 'vitest';
import { likeMarks } from '../../src/core/records/index.js';
import { unknownMarks } from '../../src/core/records/marks.js';
import { sieve } from '../../src/handout/sieve.js';

const problemsOf = (text: string) => unknownMarks({ path: 'content/rooms/study.md', text });

/** Each was to hide what follows it, and hides nothing as HTML or by our marks. */
const slips: readonly string[] = [
  '<!-- builders -->',
  '<!-- bulider -->',
  '<!-- trade -->',
  '<!-- for the builder -->',
  '<!-- TODO -->',
  '<!---->',
  '<!-- builder',
  '<!-- builder ->',
  '<!-builder->',
  '<!- builder -->',
  '<! -- builder -->',
  '< !-- builder -->',
  '<!builder>',
  '<builder>',
  '</ builder>',
  '<?builder?>',
  '<-- builder -->',
  '!-- builder -->',
  '/builder -->',
  '[!-- builder --]',
  '&lt;!-- builder --&gt;',
  '&lt!-- builder --&gt',
  '&#60;!-- builder --&#62;',
  '&#x3C;!-- builder --&#x3e;',
  '<&excl;-- builder -->',
  '<!&#45;&#45; builder -->',
  '<!\u2010\u2010 builder \u2010\u2010>',
  '<!\u2013 builder \u2013>',
  '<!\u2014 builder \u2014>',
  '<!\u2212\u2212 builder \u2212\u2212>',
  '\uff1c\uff01\uff0d\uff0d builder \uff0d\uff0d\uff1e',
  '\u2039!-- builder --\u203a',
  '<!-- \uff42uilder -->',
  '<\u200b!-- builder -->',
  '<!\u00ad-- builder -->',
  '<!-\u2060- builder -->',
  '<!-- buil\u00adder -->',
  '<!-- builder\u200b -->',
  '<!-- bu\u0456lder -->',
];

describe('what looks like a mark', () => {
  test.each(slips)('is an error at its line, and nothing after it is in a handout: %j', (slip) => {
    const text = `First.\n\nSecond ${slip} hidden.`;
    expect(problemsOf(text)).toMatchObject([
      { code: 'comment-unknown', severity: 'error', at: { line: 3, column: 8 } },
    ]);
    expect(sieve(text)).toBe('First.\n\nSecond');
  });

  test('is found among marks that are sound, each at its place', () => {
    const text = '<!-- trades -->\nA\n&lt;!-- builder --&gt; B\n<!-- /trades -->\n<!\u2010\u2010 x \u2010\u2010>';
    expect(problemsOf(text).map(({ at }) => [at.line, at.column])).toEqual([
      [3, 1],
      [5, 1],
    ]);
  });
});

test.each([
  'Ask the builder -> then the owner.',
  'Careful! - the builder shuts the water off.',
  'Joints < 1/8 in. and > 1/16 in.; trades agree on it.',
  '<https://example.com/builder>',
  'A <- B, and a door <= 3 ft.',
  'R&lt;D; a&b; &amp; trades.',
  'Builder\u2014trades\u2014owner.',
])('is no mark: %j', (text) => expect(likeMarks(text)).toEqual([]));

describe('a sound mark', () => {
  test.each([
    ['ends nothing', 'Hidden? <!-- /builder --> Seen.', 9],
    ['begins what is marked already', '<!-- builder --> a <!-- builder --> b <!-- /builder --> c', 20],
  ])('that %s is an error', (why, text, column) => {
    expect(problemsOf(text)).toMatchObject([{ code: 'comment-unknown', at: { line: 1, column } }]);
    expect(problemsOf(text)[0]?.message).toContain(why);
  });

  test('is none', () =>
    expect(problemsOf('<!-- trades --> a <!--builder-->b<!-- /Builder --> <!-- /trades -->')).toEqual([]));
});
