import { describe, expect, test } from 'vitest';
import { leafFaces, timberFaces, treadFaces, trimFaces } from '../../../src/core/takeoff/arithmetic/index.js';
import { fromFeet, fromInches } from '../../../src/base/units/index.js';

const inch = fromInches;

describe('what is coated, by hand', () => {
  // 48' × (5 1/2" + 3/4") = 48 × 6.25/12 = 25 sq ft.
  test('48 ft of base, its face and top edge', () => {
    expect(trimFaces(48, { face: inch(5.5), thickness: inch(0.75), edges: 1 })).toBeCloseTo(25, 9);
  });

  // 24' × (4 1/2" + 2 × 3/4") = 24 × 0.5 = 12 sq ft.
  test('24 ft of casing, its face and both edges', () => {
    expect(trimFaces(24, { face: inch(4.5), thickness: inch(0.75), edges: 2 })).toBeCloseTo(12, 9);
  });

  // 2 × 2.5 × 8 = 40; 1 1/2" around 2 × (2.5 + 8) = 21 ft is 2.625.
  test('a leaf of 2\'-6" by 8\'-0", both faces and four edges', () => {
    const size = { width: fromFeet(2.5), height: fromFeet(8) };
    expect(leafFaces(size, inch(1.5), 1)).toBeCloseTo(42.625, 9);
  });

  // 5' of pair: 2 × 5 × 8 = 80; edges 2 × 5 + 4 × 8 = 42 ft of 1 1/2" are 5.25.
  test('a pair has two edges more', () => {
    const size = { width: fromFeet(5), height: fromFeet(8) };
    expect(leafFaces(size, inch(1.5), 2)).toBeCloseTo(85.25, 9);
  });

  // The demo's chords: 2 × (7 1/2" + 11 1/2") = 38" around, 72 ft: 228 sq ft. With the top hidden 30 1/2" around: 183.
  test('timber on four sides, and on three under a ceiling', () => {
    const section = { width: inch(7.5), depth: inch(11.5) };
    expect(timberFaces(section, fromFeet(72), 4)).toBeCloseTo(228, 9);
    expect(timberFaces(section, fromFeet(72), 3)).toBeCloseTo(183, 9);
  });

  // 42" × (10 1/2" + 1" + 1/2") = 504 sq in, 3.5 sq ft; 16 of them 56, open on both sides 112.
  test('treads, boxed and open', () => {
    const tread = { width: inch(42), going: inch(10.5), nosing: inch(1), thickness: inch(0.5) };
    expect(treadFaces(16, { ...tread, isOpen: false })).toBeCloseTo(56, 9);
    expect(treadFaces(16, { ...tread, isOpen: true })).toBeCloseTo(112, 9);
  });
});
