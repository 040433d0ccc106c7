import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLength, parseSize, printLength, printLengthBeside, type Length } from '../../src/base/units/index.js';

const inch = 25_400_000;
const foot = 304_800_000;

function nanometres(text: string): number {
  const reading = parseLength(text);
  if (!reading.ok) throw new Error(reading.why);
  return reading.value;
}

describe('parseLength', () => {
  // Worked by hand from 1 in = 25.4 mm.
  it.each([
    [`14'-6 1/2"`, 14 * foot + 6.5 * inch],
    [`14' 6"`, 14 * foot + 6 * inch],
    [`14'6"`, 14 * foot + 6 * inch],
    [`14'6-1/2"`, 14 * foot + 6.5 * inch],
    [`14'-6-1/2"`, 14 * foot + 6.5 * inch],
    [`14'-0"`, 14 * foot],
    [`9'`, 9 * foot],
    [`4.5'`, 4.5 * foot],
    [`30"`, 30 * inch],
    [`6-3/4"`, 6.75 * inch],
    [`6 3/4"`, 6.75 * inch],
    [`5/8"`, 15_875_000],
    [`2'-5/8"`, 2 * foot + 15_875_000],
    [`1/64"`, 396_875],
    [`6.25"`, 6.25 * inch],
    [`4.42 m`, 4_420_000_000],
    [`900 mm`, 900_000_000],
    [`90 cm`, 900_000_000],
    [`900mm`, 900_000_000],
    [`0'-0"`, 0],
    [`14′-6½″`, 14 * foot + 6.5 * inch],
    [`14’-6 1/2”`, 14 * foot + 6.5 * inch],
    [`14' 6''`, 14 * foot + 6 * inch],
    [`14 ft 6 in`, 14 * foot + 6 * inch],
    [`14ft`, 14 * foot],
    [`-2'-0"`, -2 * foot],
    [`−2'-0"`, -2 * foot],
    [` 14' - 6" `, 14 * foot + 6 * inch],
  ])('reads %s', (text, expected) => {
    expect(nanometres(text)).toBe(expected);
  });

  it.each([
    ['14', `'14' has no unit`, `write 14' for feet, 14" for inches or 14 mm`],
    [`14'-6`, `'14'-6' lacks the inch mark`, `did you mean 14'-6"?`],
    ['14-6', `'14-6' has no unit`, `did you mean 14'-6"?`],
    ['3/4', `'3/4' has no unit`, `write 3/4"`],
    [`14'-14"`, `'14'-14"' has a foot or more of inches after the feet`, `did you mean 15'-2"?`],
    ['4,42 m', `'4,42 m' has a decimal comma`, 'did you mean 4.42 m?'],
    [`4.5'-6"`, `'4.5'-6"' has a decimal foot and inches`, 'write whole feet before inches'],
    [`6 9/8"`, `'6 9/8"' has a fraction of a whole inch or more`, 'write the whole inches before the fraction'],
    [`1/0"`, `'1/0"' divides by zero`, undefined],
    [`1/3"`, `'1/3"' is no exact length: an inch goes by halves down to 64ths`, 'write 16ths or 64ths, or millimetres'],
    ['', 'the length is empty', `write a length such as 14'-6"`],
    ['two feet', `'two feet' is not a length`, `write a length such as 14'-6 1/2", 30" or 4.42 m`],
    [
      '99999999 m',
      `'99999999 m' is longer than any house`,
      'see whether a digit went astray, or feet stand for inches',
    ],
    ['0.0000000001 m', `'0.0000000001 m' is finer than a nanometre`, 'write fewer digits'],
  ])('refuses %s', (text, why, fix) => {
    expect(parseLength(text)).toEqual({ ok: false, why, ...(fix !== undefined && { fix }) });
  });

  it('never throws, whatever is written', () => {
    fc.assert(fc.property(fc.string(), (text) => typeof parseLength(text).ok === 'boolean'));
    const signs = fc.constantFrom(...`0123456789'"-/ .,xmcft`);
    fc.assert(fc.property(fc.string({ unit: signs }), (text) => typeof parseLength(text).ok === 'boolean'));
  });
});

describe('printLength', () => {
  it.each([
    [14 * foot + 6.5 * inch, `14'-6 1/2"`],
    [6.75 * inch, `6 3/4"`],
    [9 * foot, `9'-0"`],
    [inch / 16, `1/16"`],
    [0, `0"`],
    [2 * foot + inch / 2, `2'-0 1/2"`],
    // 1/32" is half a sixteenth: up. A hair less: down.
    [inch / 32, `1/16"`],
    [inch / 32 - 1, `0"`],
    // 11 31/32" rounds up into the foot.
    [foot - inch / 32, `1'-0"`],
    [-3.5 * inch, `−3 1/2"`],
    [-1, `0"`],
  ])('%d nm is %s', (length, text) => {
    expect(printLength(length as Length)).toBe(text);
  });

  it('is read back exactly for every sixteenth', () => {
    const sixteenths = fc.integer({ min: -40_000, max: 40_000 });
    fc.assert(fc.property(sixteenths, (n) => nanometres(printLength(((n * inch) / 16) as Length)) === (n * inch) / 16));
  });

  it('is never further off than half a sixteenth', () => {
    const lengths = fc.integer({ min: 0, max: 100 * foot });
    fc.assert(fc.property(lengths, (n) => Math.abs(nanometres(printLength(n as Length)) - n) <= inch / 32));
  });
});

describe('printLengthBeside', () => {
  it.each([
    [4_420_000_000, '4.42 m'],
    [4_432_300_000, '4.432 m'],
    [1_000_000_000, '1.00 m'],
    [165_100_000, '165 mm'],
    [999_600_000, '1.00 m'],
    [-165_100_000, '−165 mm'],
  ])('%d nm is %s', (length, text) => {
    expect(printLengthBeside(length as Length)).toBe(text);
  });

  it('is read back exactly for every millimetre', () => {
    const millimetres = fc.integer({ min: 0, max: 100_000 });
    fc.assert(
      fc.property(millimetres, (n) => nanometres(printLengthBeside((n * 1_000_000) as Length)) === n * 1_000_000),
    );
  });
});

describe('parseSize', () => {
  it.each([`24'-0" x 18'-6"`, `24' × 18'-6"`, `24'x18' 6"`])('reads %s', (text) => {
    expect(parseSize(text)).toEqual({ ok: true, value: { eastWest: 24 * foot, northSouth: 18.5 * foot } });
  });

  it.each([`24'-0"`, `24' x 0"`, `24 x 18`, `24' x 18' x 9'`])('refuses %s', (text) => {
    expect(parseSize(text).ok).toBe(false);
  });
});
