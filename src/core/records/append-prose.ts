/** A record with paragraphs behind its prose; every byte before them stays as it was, and lines end as they do there. `text` is a record that
 *  was read without errors. */
export function appendProse(text: string, paragraphs: readonly string[]): string {
  const eol = text.includes('\r\n') ? '\r\n' : '\n';
  const gap = /(?:\r?\n){2}$/u.test(text) ? '' : text.endsWith('\n') ? eol : eol + eol;
  return `${text}${gap}${paragraphs.join('\n\n').replaceAll('\n', eol)}${eol}`;
}
