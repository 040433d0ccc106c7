/** Coloured code as lines with anchors `L1`, `L2` …: a line that another page points to can be linked. `html` is what the
 *  highlighter returned: `<pre …><code …>…</code></pre>`. */
export function numberedLines(html: string): string {
  const lines = wholeLines(html).map((line, index) => {
    const number = index + 1;
    return `<span class="line" id="L${number}"><a class="line-number" href="#L${number}" aria-label="Line ${number}">${number}</a>${line}\n</span>`;
  });
  return `<pre class="record-text" tabindex="0"><code>${lines.join('')}</code></pre>`;
}

/** Unified hunks, coloured, as lines that say for the ear what their sign says for the eye. */
export function diffLines(html: string): string {
  const lines = wholeLines(html).map((line) => {
    const text = line.replace(/<[^>]*>/g, '');
    const [, was, now] = /^@@ -(\d+)(?:,\d+)? \+(\d+)/.exec(text) ?? [];
    if (was !== undefined) return `<span class="line line-hunk">from line ${now === '0' ? was : now}\n</span>`;
    if (text.startsWith('-')) return `<span class="line line-gone">${ear('Taken out: ')}${line}\n</span>`;
    if (text.startsWith('+')) return `<span class="line line-new">${ear('New: ')}${line}\n</span>`;
    return `<span class="line">${line}\n</span>`;
  });
  return `<pre class="record-text diff-text" tabindex="0"><code>${lines.join('')}</code></pre>`;
}

function ear(words: string): string {
  return `<span class="for-the-ear">${words}</span>`;
}

/** Of a record of many selections they would be two of five elements, and are read by their places anyhow. */
const punctuation = /<span class="token punctuation">([^<]*)<\/span>/gu;

/** The lines of coloured code, without a colour for punctuation. Spans that run over a line's end are closed there and opened again. */
function wholeLines(html: string): string[] {
  const inside = /^<pre[^>]*><code[^>]*>([\s\S]*)<\/code><\/pre>$/.exec(html)?.[1] ?? '';
  const open: string[] = [];
  return inside
    .replace(punctuation, '$1')
    .replace(/\n((?:<\/span>)*)$/, '$1')
    .split('\n')
    .map((line) => {
      const before = open.join('');
      for (const [tag] of line.matchAll(/<span[^>]*>|<\/span>/g)) {
        if (tag === '</span>') open.pop();
        else open.push(tag);
      }
      return `${before}${line}${'</span>'.repeat(open.length)}`;
    });
}

/** Text as the highlighter would return it, when it is too long to colour. */
export function plainLines(text: string): string {
  const escaped = text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
  return `<pre><code>${escaped}</code></pre>`;
}
