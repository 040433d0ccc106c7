import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measureParts, openingKinds, roomUses, swatchPatterns } from '../../src/core/model/index.js';
import { readRecords } from '../../src/core/records/index.js';
import { compass } from '../../src/base/units/index.js';
import { validatorOf } from '../../src/core/records/validators.js';
import category from '../../schemas/category.schema.json' with { type: 'json' };
import opening from '../../schemas/opening.schema.json' with { type: 'json' };
import option from '../../schemas/option.schema.json' with { type: 'json' };
import room from '../../schemas/room.schema.json' with { type: 'json' };
import { smallHouse, withFiles } from './small-house.js';
import { atMost, processorTime } from '../processor-time.js';

const paths = Object.keys(smallHouse);

/** Values that somebody might leave where something else belongs. */
const slips = [
  '',
  ' ',
  '~',
  '5',
  '-1',
  'x',
  '[]',
  '{}',
  '[1, x]',
  '{ a: 1 }',
  '"',
  "'",
  ': ',
  '- x',
  'true',
  '2026-02-30',
  `3'`,
  '$1',
  '%',
  '&a',
  '*a',
  '!!x y',
  '|',
  '>',
  '\t',
  '#',
  '---',
  'null',
  '[[]]',
  '\u0000',
  '🪵',
  '.inf',
  '.nan',
  '1e300',
  '9007199254740993',
  `99999999'-0"`,
  '$999,999,999,999,999',
  '99999999 days',
  '1000000/12',
  '\u200b',
  '"\\u200b"',
  '"\\u0000"',
  '"\\ud800"',
  '[[[[',
  'h"x',
];

/** `RUNS=20000` for a long look: so many records are changed. */
const runs = Number(process.env['RUNS'] ?? 400);

describe('readRecords', () => {
  it(
    'answers with problems and never throws, whatever is done to a file',
    () => {
      const change = fc.record({
        path: fc.constantFrom(...paths),
        line: fc.nat(60),
        slip: fc.oneof(fc.constantFrom(...slips), fc.string({ maxLength: 12 })),
        how: fc.constantFrom('value', 'line', 'insert', 'drop', 'flow', 'key'),
        at: fc.nat(12),
      });
      let [slowest, read]: [number, ReturnType<typeof readRecords>] = [0, { problems: [] }];
      fc.assert(
        fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
          const files = { ...smallHouse };
          for (const { path, line, slip, how, at } of changes) {
            const lines = (files[path] ?? '').split('\n');
            const index = line % lines.length;
            const old = lines[index] ?? '';
            let seen = 0;
            const nth = (pattern: RegExp, to: string): string =>
              old.replace(pattern, (found) => (seen++ === at % 8 ? to : found));
            if (how === 'value') lines[index] = old.replace(/: .*/u, () => `: ${slip}`);
            else if (how === 'line') lines[index] = slip;
            else if (how === 'insert') lines.splice(index, 0, `${old.match(/^ */u)?.[0] ?? ''}${slip}: ${slip}`);
            else if (how === 'drop') lines.splice(index, 1);
            else if (how === 'flow') lines[index] = nth(/(?<=: )[^,{}[\]]+/gu, slip);
            else lines[index] = nth(/[a-z-]+(?=:)/gu, slip);
            files[path] = lines.join('\n');
          }
          const sources = Object.entries(files).map(([path, text]) => ({ path, text }));
          const took = processorTime(() => (read = readRecords(sources)));
          slowest = Math.max(slowest, took);
          const { value, problems } = read;
          const errors = problems.filter(({ severity }) => severity === 'error');
          for (const { file, at, message } of problems) {
            const text = files[file];
            expect(message).not.toMatch(/undefined|\[object/u);
            if (text === undefined) continue;
            const line = text.split('\n')[at.line - 1];
            expect({ file, at, line: line !== undefined, column: at.column > 0 }).toMatchObject({
              line: true,
              column: true,
            });
          }
          return (value === undefined) === errors.length > 0;
        }),
        { numRuns: runs },
      );
      // No record, however written, holds up whoever saved it.
      expect(slowest).toBeLessThan(atMost(1000, slowest));
    },
    60_000 + runs * 50,
  );

  it('reads a hundred more files within 600 ms once its validators are compiled', () => {
    const board = smallHouse['content/options/ceiling-board/fir-tg-1x6.md'] ?? '';
    const many = withFiles(
      Object.fromEntries(Array.from({ length: 100 }, (_, n) => [`content/options/ceiling-board/board-${n}.md`, board])),
    );
    readRecords(many);
    const took = processorTime(() => expect(readRecords(many).problems).toEqual([]));
    // Second reading of the process. The first also compiles the validators and warms up the YAML reader, and is not held to this.
    expect(took).toBeLessThan(atMost(600, took));
  });
});

describe('the schemas', () => {
  it('are whole: every one compiles', () => {
    for (const name of [
      'house',
      'room',
      'option',
      'category',
      'trade',
      'level',
      'milestone',
      'allowance',
      'selection',
      'opening',
      'ceiling',
      'feature',
    ]) {
      expect(validatorOf(name)).toBeTypeOf('function');
    }
  });

  it('list what the model lists', () => {
    expect(room.properties.use.enum).toEqual(roomUses);
    expect(room.properties.walls.items.properties.go.enum).toEqual(compass);
    expect(opening.$defs.own.properties.kind.enum).toEqual(openingKinds);
    expect(option.properties.swatch.properties.pattern.enum).toEqual(swatchPatterns);
    expect(category.properties.measure.properties.by.enum).toEqual(Object.keys(measureParts));
  });

  it('say of every key what it is', () => {
    const silent: string[] = [];
    const walk = (schema: unknown, path: string): void => {
      if (typeof schema !== 'object' || schema === null) return;
      const { properties } = schema as { properties?: Record<string, { description?: string; $ref?: string }> };
      for (const [key, one] of Object.entries(properties ?? {})) {
        if (typeof one === 'object' && !one.description && !one.$ref) silent.push(`${path}/${key}`);
      }
      for (const [key, one] of Object.entries(schema)) walk(one, `${path}/${key}`);
    };
    for (const schema of [room, option, category, opening]) walk(schema, schema.title);
    expect(silent).toEqual([]);
  });
});
