import { printAmount } from '../../../base/units/index.js';
import { limits } from '../limits.js';
import { FileRefused } from '../refused.js';
import { decoded } from './text.js';
import type { Entity, Value } from './value.js';

/** Walks through a file of ISO 10303-21, white space and comments aside. */
export interface Scanner {
  /** Characters from the start of the file to what comes next. */
  place(): number;
  /** Passes over a word if it comes next. */
  skip(word: string): boolean;
  expect(word: string): void;
  /** `#12=TYPE(…);` */
  entity(): Entity;
  /** `TYPE(…);` */
  header(): Omit<Entity, 'id'>;
}

const number = /[-+]?\d+(?:\.\d*)?(?:[Ee][-+]?\d+)?/uy;
const name = /[A-Za-z][A-Za-z0-9_-]*/uy;
const digits = /\d{1,15}/uy;

export function makeScanner(text: string): Scanner {
  let at = 0;
  let depth = 0;
  let values = 0;

  const broken = (what: string): FileRefused =>
    new FileRefused(
      'model-form',
      what,
      'export the model again: this is no text of ISO 10303-21',
      Math.min(at, text.length),
    );
  const cutOff = (): FileRefused => {
    const fix = 'copy or export the file again: the last line of a whole one is END-ISO-10303-21;';
    return new FileRefused('model-cut-off', 'the file ends in the middle', fix, text.trimEnd().length);
  };
  const unexpected = (): FileRefused => {
    if (at >= text.length) return cutOff();
    return broken(`'${text.slice(at, at + 20).replace(/\s[^]*/u, '')}' is not expected here`);
  };

  /** Passes over white space and comments. */
  const gap = (): void => {
    for (;;) {
      const code = text.charCodeAt(at);
      if (code <= 32) at += 1;
      else if (code === 0x2f && text.charCodeAt(at + 1) === 0x2a) {
        const end = text.indexOf('*/', at + 2);
        if (end < 0) throw cutOff();
        at = end + 2;
      } else return;
    }
  };
  const matched = (pattern: RegExp): string | undefined => {
    pattern.lastIndex = at;
    const found = pattern.exec(text)?.[0];
    if (found !== undefined) at += found.length;
    return found;
  };
  const skip = (word: string): boolean => {
    gap();
    if (!text.startsWith(word, at)) return false;
    at += word.length;
    return true;
  };
  const expect = (word: string): void => {
    if (skip(word)) return;
    throw word.startsWith(text.slice(at, at + word.length)) ? cutOff() : unexpected();
  };

  const quoted = (): string => {
    // Two quotes in a row are one of the text.
    const pieces: string[] = [];
    do pieces.push(upTo("'"));
    while (text[at] === "'");
    return decoded(pieces.join("'"));
  };
  const upTo = (sign: string): string => {
    const end = text.indexOf(sign, at + 1);
    if (end < 0) throw cutOff();
    const inside = text.slice(at + 1, end);
    at = end + 1;
    return inside;
  };
  const list = (): readonly Value[] => {
    depth += 1;
    if (depth > limits.nesting) {
      const fix = 'export the model again: no entity of a house needs that';
      throw new FileRefused('model-too-deep', `lists stand in each other more than ${limits.nesting} deep`, fix, at);
    }
    expect('(');
    const items: Value[] = [];
    if (!skip(')')) {
      do items.push(value());
      while (skip(','));
      expect(')');
    }
    depth -= 1;
    return items;
  };
  const value = (): Value => {
    values += 1;
    if (values > limits.values) {
      const most = `${printAmount(limits.values / 1_000_000, 0)} million`;
      const fix = 'export the rooms of this house alone, without furniture and fittings';
      throw new FileRefused('model-too-large', `the model has more than ${most} values`, fix, at);
    }
    gap();
    switch (text[at]) {
      case '$':
      case '*':
        at += 1;
        return undefined;
      case '#':
        return { ref: id() };
      case "'":
        return quoted();
      case '(':
        return list();
      case '.':
        return { word: upTo('.').toUpperCase() };
      case '"':
        return upTo('"');
    }
    return numeric() ?? typed();
  };
  const id = (): number => {
    at += 1;
    const found = matched(digits);
    if (found === undefined) throw unexpected();
    return Number(found);
  };
  const numeric = (): number | undefined => {
    const start = at;
    const found = matched(number);
    if (found === undefined) return undefined;
    const read = Number(found);
    if (!Number.isFinite(read)) throw notFinite(found, start);
    return read;
  };
  const notFinite = (written: string, start: number): FileRefused => {
    const fix = 'export the model again: every figure of a house is finite';
    return new FileRefused('model-number', `'${written.slice(0, 40)}' is not a number`, fix, start);
  };
  const typed = (): Value => {
    const start = at;
    const type = matched(name);
    if (type === undefined) throw unexpected();
    if (/^(nan|inf|infinity)$/iu.test(type)) throw notFinite(type, start);
    const [inner] = list();
    return { type: type.toUpperCase(), value: inner };
  };
  const header = (): Omit<Entity, 'id'> => {
    gap();
    const type = matched(name);
    if (type === undefined) throw unexpected();
    const args = list();
    expect(';');
    return { type: type.toUpperCase(), args };
  };

  return {
    place: () => {
      gap();
      return at;
    },
    skip,
    expect,
    header,
    entity: () => {
      gap();
      if (text[at] !== '#') throw unexpected();
      const own = id();
      expect('=');
      return { id: own, ...header() };
    },
  };
}
