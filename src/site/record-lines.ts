/** Coloured code as lines with anchors `L1`, `L2` …: a line that another page points to can be linked. Spans that run over
 *  a line's end are closed there and opened again. `html` is what the highlighter returned: `<pre …><code …>…</code></pre>`. */
export function numberedLines(html: string): string {
  const inside = /^<pre[^>]*><code[^>]*>([\s\S]*)<\/code><\/pre>$/.exec(html)?.[1] ?? '';
  const open: string[] = [];
  const lines = inside
    .replace(/\n$/, '')
    .split('\n')
    .map((line, index) => {
      const before = open.join('');
      for (const [tag] of line.matchAll(/<span[^>]*>|<\/span>/g)) {
        if (tag === '</span>') open.pop();
        else open.push(tag);
      }
      const after = '</span>'.repeat(open.length);
      const number = index + 1;
      return `<span class="line" id="L${number}"><a class="line-number" href="#L${number}" aria-label="Line ${number}">${number}</a>${before}${line}${after}\n</span>`;
    });
  return `<pre class="record-text" tabindex="0"><code>${lines.join('')}</code></pre>`;
}

/** Text as the highlighter would return it, when it is too long to colour. */
export function plainLines(text: string): string {
  const escaped = text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
  return `<pre><code>${escaped}</code></pre>`;
}
