import { describe, expect, test } from 'vitest';
import { acceptCautions, type Caution } from '../../src/core/caution/index.js';
import { option } from './house.js';
import { smallBook, smallFiles, type Edits } from '../book/small-house.js';
import { makeBook } from '../../src/core/book/index.js';
import { measureHouse } from '../../src/core/measure/index.js';
import { readRecords } from '../../src/core/records/index.js';

/** The study of the small house under a ceiling that is low over its door. */
const low: Edits = { 'content/rooms/study.md': [[`ceiling: flat 9'-0"`, `ceiling: flat 7'-6"`]] };

function accepted(...lines: readonly string[]): Edits {
  return { ...low, 'content/house.md': [['milestones:', `cautions:\n${lines.join('\n')}\nmilestones:`]] };
}

function problemsOf(edits: Edits): readonly { code: string; severity: string; fix?: string; line: number }[] {
  const records = readRecords(smallFiles(edits));
  const measures = records.value && measureHouse(records.value);
  const book = records.value && measures?.value && makeBook(records.value, measures.value, '2026-04-20');
  return [...records.problems, ...(book?.problems ?? [])].map(({ code, severity, fix, at }) => ({
    code,
    severity,
    line: at.line,
    ...(fix !== undefined && { fix }),
  }));
}

const line = (id: string, on = '2026-04-01'): string =>
  `  - { accept: ${id}, by: Architect, on: ${on}, why: Measured twice }`;

describe('accepting a caution', () => {
  test('keeps it in the register, with who, when and why', () => {
    const [caution, ...more] = smallBook(accepted(line('door-under-slope/study/D01'))).cautions;
    expect(more).toEqual([]);
    expect(caution?.id).toBe('door-under-slope/study/D01');
    expect(caution?.accepted).toEqual({ by: 'Architect', on: '2026-04-01', why: 'Measured twice' });
  });

  test('several for one reason', () => {
    expect(smallBook(accepted(line('[door-under-slope/study/D01]'))).cautions[0]?.accepted?.by).toBe('Architect');
  });

  test('that there is not is a warning at its line, with what was meant', () => {
    const [problem, ...more] = problemsOf(accepted(line('door-under-slop/study/D01')));
    expect(more).toEqual([]);
    expect(problem).toMatchObject({ code: 'caution-unknown', severity: 'warning' });
    expect(problem?.fix).toMatch(/^did you mean 'door-under-slope\/study\/D01'\?/);
    expect(smallBook(accepted(line('other')), '2026-04-20', () => true).cautions[0]?.accepted).toBeUndefined();
  });

  test('twice is a warning; the first counts', () => {
    const edits = accepted(line('door-under-slope/study/D01'), line('door-under-slope/study/D01', '2026-04-02'));
    expect(problemsOf(edits)).toMatchObject([{ code: 'caution-accepted-twice', severity: 'warning' }]);
    expect(smallBook(edits, '2026-04-20', () => true).cautions[0]?.accepted?.on).toBe('2026-04-01');
  });

  test('without a reason is an error', () => {
    const bare = '  - { accept: door-under-slope/study/D01, by: Architect, on: 2026-04-01 }';
    expect(problemsOf(accepted(bare)).some(({ severity }) => severity === 'error')).toBe(true);
  });
});

describe('an acceptance that is older than the choice it speaks of', () => {
  const { origin } = option({});
  const acceptance = (on: string) => ({
    caution: 'a/b/c',
    by: 'Architect',
    on,
    why: 'seen',
    path: ['cautions', 0, 'accept'],
  });
  const caution: Caution = {
    id: 'a/b/c',
    rule: 'a',
    title: '',
    room: 'b',
    place: 'c',
    placeText: 'C',
    selections: ['first', 'second'],
    trades: [],
    seen: '',
    says: '',
    source: { document: '', edition: '', section: '', isCode: false },
    locally: '',
    ask: '',
  };
  const days: Readonly<Record<string, string>> = { second: '2026-04-10' };

  test.each([
    ['2026-04-09', ['caution-accepted-before'], false],
    ['2026-04-10', [], true],
    ['2026-04-11', [], true],
  ])('of %s for a choice of 10 April', (on, codes, isAccepted) => {
    const { cautions, problems } = acceptCautions(
      [caution],
      { acceptances: [acceptance(on)], origin },
      (id) => days[id],
    );
    expect(problems.map(({ code }) => code)).toEqual(codes);
    expect(cautions[0]?.accepted !== undefined).toBe(isAccepted);
    expect(cautions).toHaveLength(1);
  });
});
