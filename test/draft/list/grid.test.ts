import process from 'node:process';
import { describe, expect, test } from 'vitest';
import { boundedGrid, gridOfText, printListProblems, textOfList } from '../../../src/draft/index.js';
import { columnLetters } from '../../../src/draft/list/grid.js';
import { atMost, processorTimeSince } from '../../processor-time.js';

const words = 'Größe;Preis\r\n"Ahorn ""A""";12,40\r\n';

describe('the letters of a list', () => {
  test.each([
    ['UTF-8', Buffer.from(words)],
    ['UTF-8 with its mark', Buffer.from(`\ufeff${words}`)],
    ['UTF-16', Buffer.from(`\ufeff${words}`, 'utf16le')],
    ['UTF-16 the other way round', Buffer.from(`\ufeff${words}`, 'utf16le').swap16()],
  ])('are read in %s', (_, bytes) => {
    const text = textOfList(bytes);
    expect(text).toMatchObject({ ok: true, value: { text: expect.stringContaining('Größe') as string } });
    expect(text.ok && text.value.guessed).toBeFalsy();
    expect(text.ok && gridOfText(text.value.text)).toEqual({
      ok: true,
      value: [
        ['Größe', 'Preis'],
        ['Ahorn "A"', '12,40'],
      ],
    });
  });

  test('of an older code are guessed, and that is said', () => {
    expect(textOfList(Buffer.from('Größe €', 'latin1'))).toMatchObject({
      ok: true,
      value: { guessed: 'Windows-1252' },
    });
    // The sign of the euro is 0x80 there.
    expect(textOfList(Uint8Array.of(0x80, 0xf6))).toMatchObject({ ok: true, value: { text: '€ö' } });
  });

  test('that are none are refused', () => {
    expect(textOfList(Uint8Array.of(65, 0, 66)).ok).toBe(false);
  });
});

describe('the rows of a list', () => {
  test.each([
    ['comma', 'a,b,c\n1,"2;3",4\n'],
    ['semicolon', 'a;b;c\n1;"2;3";4\n'],
    ['tab', 'a\tb\tc\n1\t2;3\t4\n'],
  ])('are told apart by %s', (_, text) => {
    expect(gridOfText(text)).toMatchObject({
      ok: true,
      value: [
        ['a', 'b', 'c'],
        ['1', '2;3', '4'],
      ],
    });
  });

  test('may hold inches, and an open quotation mark is told', () => {
    expect(gridOfText('a,b\n5" board,1\n')).toMatchObject({
      ok: true,
      value: [
        ['a', 'b'],
        ['5" board', '1'],
      ],
    });
    expect(gridOfText('a,b\n"5 board,1\n')).toMatchObject({ ok: false });
  });

  test('are bounded: a million of them are refused without being read', () => {
    const text = 'name,price,unit\n' + 'a,1,sf\n'.repeat(1_000_000);
    const start = process.cpuUsage();
    const grid = gridOfText(text);
    const bounded = grid.ok && boundedGrid(grid.value);
    const took = processorTimeSince(start);
    expect(bounded).toMatchObject({ ok: false, why: 'it has more than 20000 rows' });
    expect(took).toBeLessThan(atMost(1500, took));
  });

  test('are bounded in columns, and cells in letters', () => {
    expect(boundedGrid([Array.from({ length: 201 }, () => 'a')])).toMatchObject({ ok: false });
    expect(boundedGrid([['a'], ['a'.repeat(2001)]])).toMatchObject({
      ok: false,
      why: 'a cell of row 2 has more than 2000 characters',
    });
  });
});

test('columns are named as spreadsheets name them', () => {
  expect([0, 25, 26, 27, 51, 52, 701, 702].map(columnLetters)).toEqual(['A', 'Z', 'AA', 'AB', 'AZ', 'BA', 'ZZ', 'AAA']);
});

test('what a list holds moves no cursor where it is told', () => {
  const told = printListProblems('list.csv', [
    { row: 4, column: 2, what: "'\u001b[2J' is no price", fix: 'correct it', severity: 'error' },
  ]);
  expect(told).toBe("list.csv row 5, C  error: '�[2J' is no price\n      | correct it\n");
});
