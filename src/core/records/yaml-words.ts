import { positionOf, type Position, type ProblemCode } from '../../base/problem/index.js';
import { typographicStart } from './lookalikes.js';

/** What is wrong with a record's YAML, in words for somebody who never read of YAML, and where it is mended. */
interface YamlWords {
  readonly message: string;
  readonly fix: string;
  readonly where: Position;
  /** Absent: yaml-broken. */
  readonly code?: ProblemCode;
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
  const typographic = typographicStart.exec(line);
  if (typographic) {
    const message = `${typographic[0]} is no quote to YAML`;
    const where = { line: place.line, column: typographic.index + 1 };
    return { message, fix: 'write straight quotes around the text: "…"', where, code: 'yaml-quote' };
  }
  if (line[place.column - 1] === '#') return here('# begins a remark', quoteColor);
  if (code === 'BAD_INDENT' || (code === 'UNEXPECTED_TOKEN' && line.slice(0, place.column - 1).trim() === ''))
    return here('this line does not line up with its group', lineUp);
  const lead = /(?<=[:[{,-] +)[&*]/u.exec(line);
  if (lead) return { ...here(...startWords(lead[0])), where: { line: place.line, column: lead.index + 1 } };
  if (code === 'UNEXPECTED_TOKEN' && /["'] *$/u.test(line.slice(0, place.column - 1)))
    return here(
      'the quotes end here, and the text goes on',
      'leave the quotes out, or write the whole text between quotes that it does not hold',
    );
  switch (code) {
    case 'NON_STRING_KEY':
      return here('a key that is not a word', 'write the key in quotes');
    case 'BAD_SCALAR_START':
    case 'TAG_RESOLVE_FAILED':
      return here(...startWords(line[place.column - 1] ?? 'this sign'));
    case 'BAD_DQ_ESCAPE':
      return here('\\ has a meaning of its own between double quotes', 'write the text between single quotes');
    case 'BLOCK_IN_FLOW':
      return here(
        'this is not closed by a comma',
        'write a comma between two keys; a text that holds a colon and a space goes inside quotes',
      );
    case 'BLOCK_AS_IMPLICIT_KEY':
    case 'MULTILINE_IMPLICIT_KEY':
      return here(...keyWords(line, isProse(text, place)));
    default:
      return here(
        'this does not belong here',
        `a text that holds quotes, or a colon and a space, goes inside quotes; ${lineUp}`,
      );
  }
}

const quoteColor = 'a text that begins with # goes inside quotes, such as "#b98a5a"';

function startWords(sign: string): [message: string, fix: string] {
  return [`a text cannot begin with ${sign}`, 'write it in quotes'];
}

/** Does what is no key begin after an empty line, as prose does? */
function isProse(text: string, { line, column }: Position): boolean {
  return column === 1 && line > 2 && text.split('\n')[line - 2]?.trim() === '';
}

function keyWords(line: string, prose: boolean): [message: string, fix: string] {
  const colons = line.match(/:(?=\s|$)/gu)?.length ?? 0;
  if (prose && colons === 0)
    return ['prose begins here', 'write --- on a line of its own before it, after the last key'];
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
  const [typographic] = /[“”„‟‘’‚‛]/u.exec((text.split('\n')[where.line - 1] ?? '').slice(where.column)) ?? [];
  if (typographic !== undefined && isPair(quote, typographic)) {
    const message = `a text begins with ${quote} and ends with ${typographic}`;
    return { message, fix: `write ${quote} at both ends`, where, code: 'yaml-quote' };
  }
  return { message: `a text begins with ${quote} and never ends`, fix: `close it with ${quote}`, where };
}

function isPair(quote: string, typographic: string): boolean {
  return (quote === '"') === /[“”„‟]/u.test(typographic);
}

function offsetOf(text: string, { line, column }: Position): number {
  const before = text.split('\n').slice(0, line - 1);
  return before.reduce((sum, one) => sum + one.length + 1, column - 1);
}
