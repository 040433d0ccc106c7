import { sheetAddress, type Handout } from '../../handout/index.js';
import { codeShape, element, path, rect, svgText } from '../../base/svg/index.js';

/** The code on the foot of each sheet, which opens the page that says whether the sheet is current. */
export interface SheetCode {
  readonly address: string;
  readonly svg: string;
  /** Inches from edge to edge, the quiet around the code included. */
  readonly side: number;
  /** The quiet on one side, as a share of the whole. */
  readonly quiet: number;
}

/** Inches: narrower is slow to find for a camera, whatever it holds. */
const leastSide = 0.8;
/** Inches, 0.4 mm: a bound of ours, not a standard's; finer modules are slow to read from plain paper. */
const leastModule = 0.4 / 25.4;

/** Null where the house names no site. */
export function sheetCode(cover: Handout['cover']): SheetCode | null {
  const address = sheetAddress(cover);
  if (address === undefined) return null;
  const { size, quiet, dark } = codeShape(address);
  return {
    address,
    svg: svgText(
      element(
        'svg',
        { xmlns: 'http://www.w3.org/2000/svg', viewBox: `0 0 ${size} ${size}`, width: size, height: size },
        rect(0, 0, size, size, { fill: '#fff' }),
        path(dark, { fill: '#000' }),
      ),
    ),
    side: Math.max(leastSide, size * leastModule),
    quiet: quiet / size,
  };
}
