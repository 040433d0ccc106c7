import { encode } from 'uqr';
import { element, path, rect } from './element.js';
import { svgText } from './text.js';

/** ISO/IEC 18004 asks for four modules of quiet around the code. */
const quiet = 4;

/** A code for a camera, drawn dark on white. */
export interface CodeDrawing {
  readonly svg: string;
  /** Modules from edge to edge with the quiet around them: the width and height of its view. */
  readonly size: number;
  /** Of these, the white ones on each side. */
  readonly quiet: number;
}

/** Draws the code (QR, ISO/IEC 18004, correction M) of a text, in whole modules. Throws where the text is longer than any code holds. */
export function drawCode(text: string): CodeDrawing {
  const { data, size } = encode(text, { ecc: 'M', border: quiet });
  const dark = data.flatMap((row, y) => runs(row).map(([from, length]) => `M${from} ${y}h${length}v1h-${length}z`));
  const drawing = element(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', viewBox: `0 0 ${size} ${size}`, width: size, height: size },
    rect(0, 0, size, size, { fill: '#fff' }),
    path(dark.join(''), { fill: '#000', 'shape-rendering': 'crispEdges' }),
  );
  return { svg: svgText(drawing), size, quiet };
}

/** Where dark modules follow each other in a row: the first, and how many. */
function runs(row: readonly boolean[]): readonly (readonly [number, number])[] {
  const found: [number, number][] = [];
  for (const [x, isDark] of row.entries()) {
    const last = found.at(-1);
    if (!isDark) continue;
    if (last && last[0] + last[1] === x) last[1] += 1;
    else found.push([x, 1]);
  }
  return found;
}
