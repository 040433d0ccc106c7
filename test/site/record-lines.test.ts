import { describe, expect, test } from 'vitest';
import { numberedLines, plainLines } from '../../src/site/record-lines.js';

describe('numberedLines', () => {
  test('numbers each line with an anchor', () => {
    const html = numberedLines('<pre class="x"><code>a\nb</code></pre>');
    expect(html).toContain('id="L1"');
    expect(html).toContain('id="L2"');
    expect(html).not.toContain('id="L3"');
  });

  test('closes a colour at the end of a line and opens it again on the next', () => {
    const html = numberedLines('<pre><code><span class="string">one\ntwo</span> three</code></pre>');
    expect(html).toContain('<span class="string">one</span>\n</span>');
    expect(html).toContain('<span class="string">two</span> three');
  });

  test('keeps punctuation without an element of its own', () => {
    const html = numberedLines(
      '<pre><code><span class="token key">at</span><span class="token punctuation">:</span> b</code></pre>',
    );
    expect(html).toContain('<span class="token key">at</span>: b');
  });

  test('takes the last line break as the end of the file, not as a line', () => {
    expect(numberedLines('<pre><code>a\n</code></pre>')).not.toContain('id="L2"');
  });
});

test('plainLines escapes what the highlighter does not see', () => {
  expect(numberedLines(plainLines('<b>&amp;</b>'))).toContain('&lt;b&gt;&amp;amp;&lt;/b&gt;');
});
