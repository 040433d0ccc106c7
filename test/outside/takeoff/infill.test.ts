import { expect } from 'vitest';
import { balustersIn, cablesUnder } from '../../../src/core/takeoff/arithmetic/index.js';
import { fromInches } from '../../../src/base/units/index.js';
import { published } from '../published.js';

published(
  {
    what: 'ten feet of rail, balusters of 1 1/2" and no gap over 4": 22 of them, 3.78" between',
    source: 'SuperCalX, baluster calculator, worked example, supercalx.com/construction/baluster-calculator',
    mark: 'S',
  },
  () => {
    const { balusters, gap } = balustersIn(fromInches(120), fromInches(1.5), fromInches(4));
    expect(balusters).toBe(22);
    expect(gap / fromInches(1)).toBeCloseTo(3.7826, 4);
  },
);

published(
  {
    what: 'balusters = (opening − widest gap) ÷ (width + widest gap), rounded up',
    source: 'justhetool.com/baluster-spacing-calculator.html',
    mark: 'C',
  },
  () => {
    // (46.5 − 4) ÷ 5.5 = 7.7
    expect(balustersIn(fromInches(46.5), fromInches(1.5), fromInches(4)).balusters).toBe(8);
  },
);

published(
  {
    what: 'thirty inches from the deck to the top rail with cables at 3": nine',
    source: 'Suncor Stainless, cable spacing, suncorstainless.com/product-information/print/24',
    mark: 'S',
  },
  () => {
    expect(cablesUnder(fromInches(30), fromInches(3))).toBe(9);
  },
);

published(
  {
    what: 'a railing of thirty-six inches with cables at 3": eleven',
    source: 'Ekoo Hardware, cable space, ekoohardware.com/n1897798/CABLE-SPACE.htm',
    mark: 'S',
  },
  () => {
    expect(cablesUnder(fromInches(36), fromInches(3))).toBe(11);
  },
);
