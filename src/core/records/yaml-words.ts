import { positionOf, type Position } from '../../base/problem/index.js';

/** What is wrong with a record's YAML, in words for somebody who never read of YAML, and where it is mended. */
interface YamlWords {
  readonly message: string;
  readonly fix: string;
  readonly where: Position;
}

interface Broken {
  readonly text: string;
  /** Where the reader gave up, which may be lines after the slip. */
  readonly place: Position;
}

const lineUp = 'keys of one group line up';
const closers: Readonly<Record<string, string>> = { ']': '[', '}': '{' };

/** Words for an error by the code of the YAML reader (https://eemeli.org/yaml/#errors) and what it says. */
export function yamlWords(code: string, said: string, { text, place }: Broken): YamlWords {
  const line = text.split('\n')[place.line - 1] ?? '';
  const here = (message: string, fix: string): YamlWords => ({ message, fix, where: place });
  const closer = /end with a ([\]}])/u.exec(said)?.[1] ?? '';
  const quote = /closing (["'])quote/u.exec(said)?.[1] ?? '';
  if (closers[closer] !== undefined) return unclosed(closers[closer], closer, { text, place });
  if (quote !== '') return unquoted(quote, { text, place });
  if (line[place.column - 1] === '#') return here('# begins a remark', quoteColor);
  if (code === 'BAD_INDENT' || (code === 'UNEXPECTED_TOKEN' && line.slice(0, place.column - 1).trim() === ''))
    return here('this line does not line up with its group', lineUp);
  switch (code) {
    case 'NON_STRING_KEY':
      return here('a key that is not a word', 'write the key in quotes');
    case 'BAD_SCALAR_START':
    case 'TAG_RESOLVE_FAILED':
      return here(`a text cannot begin with ${line[place.column - 1] ?? 'this sign'}`, 'write it in quotes');
    case 'BAD_DQ_ESCAPE':
      return here('\\ has a meaning of its own between double quotes', 'write the text between single quotes');
    case 'BLOCK_IN_FLOW':
      return here(
        'this is not closed by a comma',
        'write a comma between two keys; a text that holds a colon and a space goes inside quotes',
      );
    case 'BLOCK_AS_IMPLICIT_KEY':
    case 'MULTILINE_IMPLICIT_KEY':
      return here(...keyWords(line));
    default:
      return here(
        'this does not belong here',
        `a text that holds quotes, or a colon and a space, goes inside quotes; ${lineUp}`,
      );
  }
}

const quoteColor = 'a text that begins with # goes inside quotes, such as "#b98a5a"';

function keyWords(line: string): [message: string, fix: string] {
  const colons = line.match(/:(?=\s|$)/gu)?.length ?? 0;
  if (colons === 0) return ['this line is no key and value', 'write key: value, with a space after the colon'];
  if (colons > 1)
    return ['a second colon stands in one line', 'a text that holds a colon and a space goes inside quotes'];
  return ['a value stands on this line, and more below it', `write one of the two; ${lineUp}`];
}

/** The bracket nearest before `place` that has none to close it. Brackets inside quotes count as closed when paired there. */
function unclosed(opener: string, closer: string, { text, place }: Broken): YamlWords {
  const before = offsetOf(text, place);
  let depth = 0;
  let at = before - 1;
  for (; at >= 0; at -= 1) {
    if (text[at] === closer && !isRemark(text, at)) depth += 1;
    if (text[at] === opener && !isRemark(text, at) && (depth -= 1) < 0) break;
  }
  const where = at < 0 ? place : positionOf(text, at);
  const rest = text.slice(Math.max(at, 0)).split('\n')[0] ?? '';
  const fix = /\s#/u.test(rest) ? quoteColor : `close it with ${closer}`;
  return { message: `${opener} is not closed`, fix, where };
}

/** Does a remark begin before `at` in its line? */
function isRemark(text: string, at: number): boolean {
  return /(?:^|\s)#/u.test(text.slice(text.lastIndexOf('\n', at) + 1, at));
}

/** The quote that begins the text which never ends: the last that stands where a value begins. */
function unquoted(quote: string, { text, place }: Broken): YamlWords {
  const begins = [...text.slice(0, offsetOf(text, place)).matchAll(/(?<=[:[{,-][ \t]*)["']/gu)];
  const at = begins.findLast(([sign]) => sign === quote)?.index;
  const where = at === undefined ? place : positionOf(text, at);
  return { message: `a text begins with ${quote} and never ends`, fix: `close it with ${quote}`, where };
}

function offsetOf(text: string, { line, column }: Position): number {
  const before = text.split('\n').slice(0, line - 1);
  return before.reduce((sum, one) => sum + one.length + 1, column - 1);
}
