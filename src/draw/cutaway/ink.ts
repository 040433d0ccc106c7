import { paper } from '../swatch/index.js';

/** Colors of pictures that no finish gives. They stand on a paper card, also on dark pages. */
export const ink = {
  paper,
  line: '#26302f',
  cut: '#3b423e',
  slab: '#d8d4ca',
  bare: '#f3f1ec',
  open: '#e9e7e1',
  hatch: '#a9a69c',
  glass: '#e4ecec',
  hollow: '#4a4642',
  beyond: '#f8f5ec',
  away: '#6f7872',
  shadow: '#39342c',
  leaf: '#efece4',
} as const;
