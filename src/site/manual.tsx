import MarkdownIt, { type Token } from 'markdown-it';
import type { VNode } from 'preact';
import { render } from 'preact-render-to-string';
import { checkPath, relativeLink, type IndexEntry } from './page.js';
import { Shell } from './shell.js';

/** A text of docs/: its path there, such as `how-to/first-room.md`, and its Markdown. */
export interface ManualText {
  readonly path: string;
  readonly text: string;
}

/** A page of the manual before it is written. */
export interface ManualPage {
  readonly path: string;
  readonly render: (highlight: (language: string, text: string) => string) => string;
}

const start = 'index.html';

/** The manual as pages, in the order of its texts. The first is where one begins. */
export function manualPages(texts: readonly ManualText[]): readonly ManualPage[] {
  const index = texts.map(({ path, text }) => ({ id: path, title: titleOf(text), path: pathOf(path) }));
  return texts.map((each) => ({
    path: pathOf(each.path),
    render: (highlight) => `<!DOCTYPE html>\n${render(page(each, index, highlight))}\n`,
  }));
}

function page(
  { path, text }: ManualText,
  index: readonly IndexEntry[],
  highlight: (language: string, text: string) => string,
): VNode {
  const title = titleOf(text);
  const here = pathOf(path);
  return (
    <Shell
      title={here === start ? title : `${title} – Bookmatch`}
      home={{ name: 'Bookmatch', path: start, beside: 'Manual' }}
      index={index}
      layout="column"
      of="Pages"
      current={(entry) => (entry.path === here ? 'page' : undefined)}
      link={(to) => relativeLink(here, to)}
      sheet="sheet-manual"
    >
      <div class="manual" dangerouslySetInnerHTML={{ __html: markdownFor(highlight).render(withoutComments(text)) }} />
    </Shell>
  );
}

function pathOf(path: string): string {
  return checkPath(path.replace(/(^|\/)README\.md$/u, '$1index.html').replace(/\.md$/u, '.html'));
}

function titleOf(text: string): string {
  return /^# (.+)$/mu.exec(text)?.[1] ?? 'Manual';
}

function withoutComments(text: string): string {
  return text.replace(/<!--[\s\S]*?-->\n*/gu, '');
}

/** The program's own texts: its headings stay what they are, and links lead from page to page. */
function markdownFor(highlight: (language: string, text: string) => string): MarkdownIt {
  const markdown = new MarkdownIt({
    html: false,
    highlight: (text, language) => (['yaml', 'markdown'].includes(language) ? highlight(language, text) : ''),
  });
  const { rules } = markdown.renderer;
  rules['table_open'] = (tokens, index) =>
    `<div class="scroll" role="region" aria-label="Table: ${markdown.utils.escapeHtml(headingBefore(tokens, index))}" tabindex="0"><table>`;
  rules['table_close'] = () => '</table></div>';
  rules['th_open'] = () => '<th scope="col">';
  rules['td_open'] = () => '<td>';
  rules['heading_open'] = (tokens, index) =>
    `<${tokens[index]?.tag ?? 'h2'} id="${anchorOf(tokens[index + 1]?.content ?? '')}">`;
  rules['link_open'] = (tokens, index, options, _env, self) => {
    const href = tokens[index]?.attrGet('href') ?? '';
    tokens[index]?.attrSet('href', href.replace(/(^|\/)README\.md/u, '$1index.html').replace(/\.md(#|$)/u, '.html$1'));
    return self.renderToken(tokens, index, options);
  };
  return markdown;
}

function headingBefore(tokens: readonly Token[], index: number): string {
  const heading = tokens.slice(0, index).findLastIndex(({ type }) => type === 'heading_open');
  return tokens[heading + 1]?.content ?? '';
}

const anchorOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/gu, '');
