import MarkdownIt from 'markdown-it';
import { withoutMarks } from '../../core/records/index.js';

/** People's text. Raw HTML stays text; a link goes to the web or to mail, or stays text; pictures are left out, since the
 *  book loads nothing from elsewhere. */
const markdown = new MarkdownIt({ html: false, typographer: true, linkify: false }).disable('image');
markdown.validateLink = (url) => /^(?:https?:\/\/|mailto:)/i.test(url);
markdown.renderer.rules['link_open'] = (tokens, index, options, _env, self) => {
  tokens[index]?.attrSet('rel', 'noreferrer');
  return self.renderToken(tokens, index, options);
};

/** A page has one h1 and its own h2. People's headings begin at h3 and go down one step at a time. */
const highest = 3;

markdown.core.ruler.push('book_headings', ({ tokens }) => {
  let last = highest - 1;
  for (const [index, token] of tokens.entries()) {
    if (token.type !== 'heading_open') continue;
    last = Math.min(last + 1, Number(token.tag.slice(1)) + highest - 1, 6);
    token.tag = `h${last}`;
    const close = tokens.slice(index).find((later) => later.type === 'heading_close');
    if (close) close.tag = token.tag;
  }
});

markdown.renderer.rules['table_open'] = () =>
  '<div class="scroll" role="region" aria-label="Table in the notes" tabindex="0"><table>';
markdown.renderer.rules['table_close'] = () => '</table></div>';
markdown.renderer.rules['th_open'] = () => '<th scope="col">';
markdown.renderer.rules['td_open'] = () => '<td>';

/** Markdown as HTML. */
export function proseHtml(text: string): string {
  return markdown.render(withoutMarks(text));
}

/** One line of Markdown as HTML, without a paragraph. */
export function phraseHtml(text: string): string {
  return markdown.renderInline(withoutMarks(text));
}
