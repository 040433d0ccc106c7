import { drawCode } from '../base/svg/index.js';

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

/** Null where there is no address, since the house names no site. */
export function sheetCode(address: string | undefined): SheetCode | null {
  if (address === undefined) return null;
  const { svg, size, quiet } = drawCode(address);
  return { address, svg, side: Math.max(leastSide, size * leastModule), quiet: quiet / size };
}
