import { describe, expect, it } from 'vitest';
import { toldOf } from './small-house.js';

const board = 'content/categories/ceiling-board.md';
const grade = '  grade: { label: Grade, kind: text, choices: [clear, knotty] }\n';

/** What is told when the category's options have these attributes too. */
function toldWith(attributes: string): readonly string[] {
  return toldOf([board, grade, `${grade}${attributes}`]);
}

function rule(name: string, kind = 'text'): string {
  return `  ${name}: { label: Label, kind: ${kind} }\n`;
}

describe('a fact that a kind of product is known by, and another is lost', () => {
  it('names who cannot read it', () => {
    expect(toldWith(rule('stc', 'number') + rule('wall-adds', 'length'))).toEqual([]);
    expect(toldWith(rule('wall-adds', 'length'))).toEqual([
      `categories/ceiling-board.md:11:1 (warning) fact-missing this is sound insulation, and 'stc' is not among the attributes: the caution sound-at-bath, the caution impact-sound and the sound schedule cannot read it | add stc: { label: …, kind: number, required: true }, or rename what says it: rating of the tested wall`,
    ]);
  });

  it.each([
    ['structural', 'yes-no'],
    ['build-up', 'length'],
    ['is-combustible', 'yes-no'],
    ['sheen', 'text'],
    ['wet-floor', 'yes-no'],
  ])('%s asks for nothing else', (name, kind) => {
    expect(toldWith(rule(name, kind))).toEqual([]);
  });
});

describe('a slip of the hand', () => {
  it.each([
    ['build-upp', 'build-up'],
    ['strcutural', 'structural'],
    ['is-combustable', 'is-combustible'],
    ['wetfloor', 'wet-floor'],
    ['shene', 'sheen'],
    ['sheeen', 'sheen'],
  ])('%s is taken for %s, where nothing else tells the product', (written, meant) => {
    const told = toldWith(rule(written));
    expect(told).toHaveLength(1);
    expect(told[0]).toContain(`(warning) fact-misspelt nothing reads '${written}'`);
    expect(told[0]).toContain(`did you mean '${meant}'?`);
  });

  it('is told once, not as a lost fact too', () => {
    expect(toldWith(rule('r-value', 'number') + rule('need-cover', 'yes-no'))).toEqual([
      `categories/ceiling-board.md:17:3 (warning) fact-misspelt this is insulation, and nothing reads 'need-cover' of it: the caution thermal-barrier and the insulation schedule would read 'needs-cover' | did you mean 'needs-cover'? Rename it in the options too`,
    ]);
  });

  it.each([
    'u-value',
    'u-factor',
    'lever',
    'levels',
    'sheet',
    'code',
    'full',
    'weight',
    'height',
    'width',
    'kind',
    'cap',
  ])('%s is a word of its own', (name) => {
    expect(toldWith(rule(name))).toEqual([]);
  });
});

describe('a fact of another kind', () => {
  it('is told of the product that reads it', () => {
    expect(toldWith(rule('build-up', 'text'))).toEqual([
      `categories/ceiling-board.md:16:35 (warning) fact-kind 'build-up' of flooring is of kind text, and is read as length: the caution floor-build-up cannot read it | write kind: length`,
    ]);
  });

  it('is no matter of a product that does not have it', () => {
    expect(toldWith(rule('joint') + rule('height', 'text'))).toEqual([]);
  });
});
