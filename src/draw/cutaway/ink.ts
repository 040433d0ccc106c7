import { mix } from '../swatch/color.js';

/** Colors of pictures that no finish gives. They stand on a paper card, also on dark pages. */
export const ink = {
  paper: '#fdfcf8',
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

/** How far materials go toward paper: a picture is no sample. */
const wash = 0.28;

export function washed(color: string): string {
  return mix(color, ink.paper, wash);
}
