import MarkdownIt, { type Token } from 'markdown-it';
import { withoutMarks } from '../core/records/index.js';

/** Running text inside a block. Every string is data for the page layout, never its markup. */
type Inline =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'code'; readonly text: string }
  | { readonly kind: 'break' }
  | { readonly kind: 'strong' | 'emphasis' | 'strike'; readonly inlines: readonly Inline[] }
  | { readonly kind: 'link'; readonly href: string; readonly inlines: readonly Inline[] };

/** A block of prose. */
export type Block =
  | { readonly kind: 'paragraph' | 'heading'; readonly inlines: readonly Inline[] }
  | {
      readonly kind: 'list';
      readonly ordered: boolean;
      readonly start: number;
      readonly items: readonly (readonly Block[])[];
    }
  | { readonly kind: 'quote'; readonly blocks: readonly Block[] }
  | { readonly kind: 'code'; readonly text: string }
  | { readonly kind: 'table'; readonly head: readonly Cell[]; readonly rows: readonly (readonly Cell[])[] }
  | { readonly kind: 'rule' };

type Cell = readonly Inline[];

const markdown = new MarkdownIt({ html: false, linkify: false });

/** Markdown as plain blocks. Raw HTML stays text; pictures become their alternative text; links keep only web and mail
 *  addresses, because a path to a record means nothing on paper. */
export function readProse(body: string): readonly Block[] {
  return readBlocks({ tokens: markdown.parse(withoutMarks(body), {}), at: 0 }, undefined);
}

interface Reader {
  readonly tokens: readonly Token[];
  at: number;
}

/** Blocks up to the token of type `end`, which is consumed. */
function readBlocks(reader: Reader, end: string | undefined): Block[] {
  const blocks: Block[] = [];
  for (let token = next(reader); token && token.type !== end; token = next(reader)) {
    const block = readBlock(reader, token);
    if (block) blocks.push(block);
  }
  return blocks;
}

function readBlock(reader: Reader, token: Token): Block | undefined {
  switch (token.type) {
    case 'paragraph_open':
      return { kind: 'paragraph', inlines: readLine(reader, 'paragraph_close') };
    case 'heading_open':
      return { kind: 'heading', inlines: readLine(reader, 'heading_close') };
    case 'bullet_list_open':
      return { kind: 'list', ordered: false, start: 1, items: readItems(reader, 'bullet_list_close') };
    case 'ordered_list_open':
      return {
        kind: 'list',
        ordered: true,
        start: Number(token.attrGet('start') ?? 1),
        items: readItems(reader, 'ordered_list_close'),
      };
    case 'blockquote_open':
      return { kind: 'quote', blocks: readBlocks(reader, 'blockquote_close') };
    case 'table_open':
      return readTable(reader);
    case 'fence':
    case 'code_block':
      return { kind: 'code', text: token.content.replace(/\n$/, '') };
    case 'hr':
      return { kind: 'rule' };
    default:
      return undefined;
  }
}

/** The one inline token before `end`. */
function readLine(reader: Reader, end: string): Inline[] {
  let line: Inline[] = [];
  for (let token = next(reader); token && token.type !== end; token = next(reader)) {
    if (token.type === 'inline') line = readInlines({ tokens: token.children ?? [], at: 0 }, undefined);
  }
  return line;
}

function readItems(reader: Reader, end: string): Block[][] {
  const items: Block[][] = [];
  for (let token = next(reader); token && token.type !== end; token = next(reader)) {
    if (token.type === 'list_item_open') items.push(readBlocks(reader, 'list_item_close'));
  }
  return items;
}

function readTable(reader: Reader): Block {
  const rows: Inline[][][] = [];
  for (let token = next(reader); token && token.type !== 'table_close'; token = next(reader)) {
    if (token.type === 'tr_open') rows.push([]);
    if (token.type === 'th_open') rows.at(-1)?.push(readLine(reader, 'th_close'));
    if (token.type === 'td_open') rows.at(-1)?.push(readLine(reader, 'td_close'));
  }
  return { kind: 'table', head: rows[0] ?? [], rows: rows.slice(1) };
}

function readInlines(reader: Reader, end: string | undefined): Inline[] {
  const inlines: Inline[] = [];
  for (let token = next(reader); token && token.type !== end; token = next(reader)) {
    inlines.push(...readInline(reader, token));
  }
  return inlines;
}

function readInline(reader: Reader, token: Token): readonly Inline[] {
  switch (token.type) {
    case 'text':
    case 'text_special':
    case 'html_inline':
      return token.content === '' ? [] : [{ kind: 'text', text: token.content }];
    case 'image':
      return [{ kind: 'text', text: token.content }];
    case 'softbreak':
      return [{ kind: 'text', text: ' ' }];
    case 'hardbreak':
      return [{ kind: 'break' }];
    case 'code_inline':
      return [{ kind: 'code', text: token.content }];
    case 'strong_open':
      return [{ kind: 'strong', inlines: readInlines(reader, 'strong_close') }];
    case 'em_open':
      return [{ kind: 'emphasis', inlines: readInlines(reader, 'em_close') }];
    case 's_open':
      return [{ kind: 'strike', inlines: readInlines(reader, 's_close') }];
    case 'link_open':
      return readLink(reader, token.attrGet('href') ?? '');
    default:
      return [];
  }
}

function readLink(reader: Reader, href: string): readonly Inline[] {
  const inlines = readInlines(reader, 'link_close');
  return /^(https?|mailto):/i.test(href) ? [{ kind: 'link', href, inlines }] : inlines;
}

function next(reader: Reader): Token | undefined {
  return reader.tokens[reader.at++];
}
