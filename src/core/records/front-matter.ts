import matter from 'gray-matter';
import { isAlias, isMap, isNode, LineCounter, parseDocument, visit, type Document, type YAMLError } from 'yaml';
import type { Source } from '../model/index.js';
import { remember, type Shelf } from '../../base/units/index.js';
import {
  problemIn,
  type Origin,
  type Outcome,
  type Position,
  type Problem,
  type ProblemCode,
} from '../../base/problem/index.js';
import { conflictProblems } from './merge-conflict.js';
import { locate, placesOf, type Places } from './locate.js';
import { tooDeepAt } from './yaml-depth.js';
import { cutTexts, indentProblems } from './yaml-traps.js';
import { yamlWords } from './yaml-words.js';

/** Bytes a record may have. A long room is 10 KB; a megabyte is something else that went astray. */
export const largestRecord = 1_000_000;

/** A record's file, taken apart. */
export interface FrontMatter {
  readonly data: Readonly<Record<string, unknown>>;
  /** Markdown. */
  readonly body: string;
  readonly origin: Origin;
}

/** What a record says, as plain data. */
export interface TakenApart extends Pick<FrontMatter, 'data' | 'body'> {
  readonly places: Places;
}

const start: Position = { line: 1, column: 1 };
const shape = 'a record begins with --- on its first line, YAML, and --- again';

const known = new WeakMap<Source, Outcome<FrontMatter>>();

/** Takes a record apart into YAML front matter and Markdown, once. The YAML is 1.2 core, with each key once and without
 *  anchors, so that every value has one place in the file. `shelf` may have it of a record of the same text. */
export function readFrontMatter(source: Source, shelf?: Shelf<Outcome<TakenApart>>): Outcome<FrontMatter> {
  const read = known.get(source) ?? readSource(source, shelf);
  known.set(source, read);
  return read;
}

function readSource({ path, text }: Source, shelf?: Shelf<Outcome<TakenApart>>): Outcome<FrontMatter> {
  const at = { file: path, text: text.replace(/^\uFEFF/u, '') };
  const isClean = ({ problems }: Outcome<TakenApart>): boolean => problems.length === 0;
  const { value, problems } = remember(shelf, at.text, () => takeApart(at), isClean);
  if (!value) return { problems };
  const { places, ...said } = value;
  return { value: { ...said, origin: locate(at, places) }, problems };
}

function takeApart(at: File): Outcome<TakenApart> {
  const { file, text } = at;
  const refuse = (code: ProblemCode, message: string, fix?: string, place = start): Outcome<TakenApart> => ({
    problems: [problemIn(at, place, code, message, fix === undefined ? {} : { fix })],
  });
  if (text.length > largestRecord) {
    return refuse(
      'file-too-large',
      `the file has ${megabytes(text.length)} MB; a record has 1 MB at most`,
      'keep drawings and long papers outside content/',
    );
  }
  if (text.includes('\0')) return refuse('file-binary', 'the file is not text', 'a record is Markdown in UTF-8');
  if (text.trim() === '')
    return {
      problems: [problemIn({ file, text: '' }, start, 'file-empty', 'the file is empty', { fix: shape })],
    };
  const conflicts = conflictProblems(at);
  if (conflicts.length > 0) return { problems: conflicts };
  if (!/^---(?!-)/u.test(text)) return refuse('front-matter-missing', ...missingWords(text));
  // gray-matter would run `---js` as a program: the word after the dashes is read before anything else is.
  const language = matter.language(text).name;
  if (language !== '' && language !== 'yaml') {
    return refuse(
      'front-matter-language',
      `front matter is YAML here, not '${language}'`,
      `write --- alone in place of ---${language}`,
    );
  }
  const end = text.indexOf('\n---');
  if (end < 0 || !/^\n---[ \t]*\r?(?:\n|$)/u.test(text.slice(end, end + 200))) {
    return refuse('front-matter-open', ...openWords(text, end));
  }
  const deep = tooDeepAt(text.slice(0, end));
  if (deep) {
    return refuse(
      'yaml-too-deep',
      'the YAML is nested too deeply to be read',
      'close each [ and {; no record needs more than a few levels',
      deep,
    );
  }
  return readYaml(at);
}

interface File {
  readonly file: string;
  readonly text: string;
}

/** Dashes that are there, and not where they belong. */
function missingWords(text: string): readonly [message: string, fix: string, place: Position] {
  const lines = text.split('\n');
  const line = lines.findIndex((one) => one.trim() !== '');
  if (!/^\s*---\s*$/u.test(lines[line] ?? '')) return ['the file has no front matter', shape, start];
  const what = line > 0 ? 'an empty line stands' : 'a space stands';
  const fix = 'the file begins with ---, and nothing before it';
  return [`${what} before the --- that begins the front matter`, fix, { line: line + 1, column: 1 }];
}

/** Where the front matter should end: at a line that looks like ---, or at the first empty line that no key follows. */
function openWords(text: string, end: number): readonly [message: string, fix: string, place: Position] {
  const message = 'the front matter does not end';
  const fix = 'write --- on a line of its own after the last key';
  const lines = text.split('\n');
  const at = (index: number): Position => ({ line: index + 1, column: 1 });
  if (end >= 0) return [message, fix, at(text.slice(0, end).split('\n').length)];
  const almost = lines.findIndex((line, index) => index > 0 && /^\s*(?:-{2,}|[–—―_=*]+)\s*$/u.test(line));
  if (almost > 0)
    return [
      `${message}: '${(lines[almost] ?? '').trimEnd()}' is not ---`,
      'write --- alone, from the first column',
      at(almost),
    ];
  const isYaml = (line: string): boolean => /^(?:[ #-]|[^\s:]+:(?:\s|$))/u.test(line);
  const gap = lines.findIndex(
    (line, index) =>
      index > 0 && line.trim() === '' && !isYaml(lines.slice(index).find((one) => one.trim() !== '') ?? 'x'),
  );
  const hasProse = gap > 0 && lines.slice(gap).some((one) => one.trim() !== '');
  const last = lines.findLastIndex((line) => line.trim() !== '');
  if (!hasProse) return [message, fix, at(last)];
  return [message, 'write --- on a line of its own after this one', at(gap - 1)];
}

function readYaml(at: File): Outcome<TakenApart> {
  const lines = new LineCounter();
  let document: Document.Parsed | undefined;
  let given = '';
  const yaml = (text: string): object => {
    given = text.replace(/\r$/u, '');
    document = parseDocument(given, {
      version: '1.2',
      uniqueKeys: true,
      stringKeys: true,
      lineCounter: lines,
      prettyErrors: false,
    });
    return {};
  };
  const refused = (): object => ({});
  // Options are always passed: without them gray-matter answers a broken file from a cache.
  const engines = { yaml, json: refused, js: refused, javascript: refused, coffee: refused };
  const body = matter(at.text, { language: 'yaml', engines }).content;
  if (!document) {
    return {
      problems: [
        problemIn(at, start, 'front-matter-empty', 'the front matter is empty', { fix: 'write at least a name' }),
      ],
    };
  }
  return takeData(at, { document, yaml: given, lines, body });
}

interface Parsed {
  readonly document: Document.Parsed;
  /** What it was parsed from: the file from the end of its first line to the second line of dashes. */
  readonly yaml: string;
  readonly lines: LineCounter;
  readonly body: string;
}

function takeData(at: File, { document, yaml, lines, body }: Parsed): Outcome<TakenApart> {
  // The YAML that the engine is given begins at the end of the line of dashes, so its lines count as the file's.
  const position = (offset: number): Position => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(1, line), column: Math.max(1, col) };
  };
  const broken = onceACause([...document.errors, ...document.warnings]);
  if (broken.length > 0) {
    const indents = broken.every(({ code }) => code === 'DUPLICATE_KEY') ? [] : indentProblems(at, yaml);
    return { problems: indents.length > 0 ? indents : broken.map((error) => yamlProblem(at, error, position)) };
  }
  const anchors = anchorProblems(at, document, position);
  if (anchors.length > 0) return { problems: anchors };
  if (!isMap(document.contents)) {
    const what = document.contents === null ? 'empty' : 'a list or a single value';
    const fix = 'write keys and values, such as name: Great room';
    const place = document.contents === null ? start : position(document.contents.range[0]);
    return {
      problems: [
        problemIn(
          at,
          place,
          document.contents === null ? 'front-matter-empty' : 'front-matter-shape',
          `the front matter is ${what}`,
          { fix },
        ),
      ],
    };
  }
  const data = document.toJS({ maxAliasCount: 0 }) as Record<string, unknown>;
  const value = { data, body: body.trim(), places: placesOf(document, position) };
  return { value, problems: cutTexts(at, yaml, document, position) };
}

/** What follows the first slip of syntax is mostly its echo; keys written twice stand for themselves. */
function onceACause(errors: readonly YAMLError[]): readonly YAMLError[] {
  const isTwice = (error: YAMLError): boolean => error.code === 'DUPLICATE_KEY';
  const first = errors.find((error) => !isTwice(error));
  return errors.filter((error) => isTwice(error) || error === first);
}

function yamlProblem(at: File, error: YAMLError, position: (offset: number) => Position): Problem {
  const place = position(error.pos[0]);
  if (error.code === 'TAB_AS_INDENT') {
    return problemIn(at, place, 'yaml-tab', 'a tab stands where YAML wants spaces', { fix: 'write spaces instead' });
  }
  if (error.code === 'DUPLICATE_KEY') {
    const key = /^[^:\s]+/u.exec(at.text.split('\n')[place.line - 1]?.slice(place.column - 1) ?? '')?.[0] ?? '';
    return problemIn(at, place, 'key-duplicate', `the key '${key}' is written twice`, { fix: 'keep one of the two' });
  }
  const { message, fix, where, code = 'yaml-broken' } = yamlWords(error.code, error.message, { text: at.text, place });
  return problemIn(at, where, code, `the YAML cannot be read: ${message}`, { fix });
}

function anchorProblems(
  at: File,
  document: Document.Parsed,
  position: (offset: number) => Position,
): readonly Problem[] {
  const problems: Problem[] = [];
  visit(document, {
    Node(_key, node) {
      if (!isNode(node) || !(isAlias(node) || node.anchor !== undefined)) return;
      const name = isAlias(node) ? `*${node.source}` : `&${node.anchor}`;
      const place = position(node.range?.[0] ?? 0);
      problems.push(
        problemIn(at, place, 'yaml-anchor', `'${name}' is a YAML anchor, which records do without`, {
          fix: 'write the value out in each place; a text that begins with & or * goes inside quotes',
        }),
      );
    },
  });
  return problems;
}

function megabytes(length: number): string {
  return (length / 1_000_000).toFixed(1);
}
