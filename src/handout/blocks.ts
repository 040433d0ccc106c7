import MarkdownIt from 'markdown-it';

/** A part of prose that stands or goes as a whole: a paragraph, a list, a table. */
export interface Block {
  /** As written, with the blank lines after it. */
  readonly written: string;
  /** As it is read, each item and cell by itself: without marks of Markdown, with what its links, titles and pictures say. */
  readonly read: readonly string[];
}

type Token = ReturnType<MarkdownIt['parse']>[number];

const markdown = new MarkdownIt({ html: false });
markdown.validateLink = () => true;

/** Prose by its blocks. What a heading or a paragraph that ends in a colon announces belongs to it. */
export function blocksOf(text: string): readonly Block[] {
  const lines = text.split('\n');
  const tokens = markdown.parse(text, {});
  const starts = tokens.flatMap((token) => (token.level === 0 && token.map && token.nesting >= 0 ? [token] : []));
  const found: { first: number; last: number; level: number; read: readonly string[]; announces: boolean }[] = [];
  for (const [index, token] of starts.entries()) {
    const [first, last] = token.map ?? [0, 0];
    const until = starts[index + 1];
    const own = tokens.slice(tokens.indexOf(token), until ? tokens.indexOf(until) : undefined);
    const read = own.map(readToken).filter((said) => said !== '');
    const level = token.type === 'heading_open' ? Number(token.tag.slice(1)) : 0;
    found.push({ first, last, level, read, announces: /[:：]\s*$/u.test(read.at(-1) ?? '') });
  }
  return join(found, lines);
}

function join(
  found: readonly { first: number; last: number; level: number; read: readonly string[]; announces: boolean }[],
  lines: readonly string[],
): readonly Block[] {
  const blocks: { first: number; read: string[] }[] = [];
  let goesOn = false;
  let at = 0;
  for (const { first, last, level, read, announces } of found) {
    // Definitions of links are in no block: they are read as written, by themselves.
    const between = lines.slice(at, first).join('\n');
    if (between.trim() !== '') blocks.push({ first: at, read: [between] });
    at = last;
    const before = blocks.at(-1);
    if (goesOn && before && level === 0) before.read.push(...read);
    else blocks.push({ first: blocks.length === 0 ? 0 : first, read: [...read] });
    goesOn = level > 0 || announces || (goesOn && level === 0 && isUnderHeading(found, first));
  }
  const rest = lines.slice(at).join('\n');
  if (rest.trim() !== '' || blocks.length === 0) blocks.push({ first: at, read: [rest] });
  return blocks.map(({ first, read }, index) => ({
    written: lines
      .slice(first, blocks[index + 1]?.first)
      .join('\n')
      .trimEnd(),
    read,
  }));
}

/** A heading holds what stands beneath it up to the next, or no paragraph could tell what it is a heading of. */
function isUnderHeading(found: readonly { first: number; level: number }[], at: number): boolean {
  return (found.findLast(({ first }) => first < at)?.level ?? 0) > 0;
}

/** What a reader, or a program that reads for one, may get of it. */
function readToken(token: Token): string {
  const attributes = (token.attrs ?? []).flatMap(([name, value]) => (name === 'style' ? [] : [decoded(value)]));
  if (token.children) return [...attributes, joinInline(token.children)].join(' ');
  return [...attributes, token.info, token.content].filter((part) => part !== '').join(' ');
}

/** Letters in and out of emphasis are one word; what links lead to is said after them. */
function joinInline(tokens: readonly Token[]): string {
  const beside: string[] = [];
  const said = tokens.map((token) => {
    beside.push(...(token.attrs ?? []).map(([, value]) => decoded(value)));
    return token.type === 'softbreak' || token.type === 'hardbreak' ? ' ' : token.content;
  });
  return [said.join(''), ...beside].join(' ');
}

function decoded(address: string): string {
  try {
    return decodeURIComponent(address);
  } catch {
    return address;
  }
}
