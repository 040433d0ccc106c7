import { encode } from 'uqr';

/** ISO/IEC 18004 asks for four modules of quiet around the code. */
const quiet = 4;

/** A code for a camera as the data of one path, drawn dark on white. */
export interface CodeShape {
  /** Modules from edge to edge with the quiet around them: the width and height of its view. */
  readonly size: number;
  /** Of these, the white ones on each side. */
  readonly quiet: number;
  readonly dark: string;
}

/** The code (QR, ISO/IEC 18004, correction M) of a text, in whole modules. Throws where the text is longer than any code holds. */
export function codeShape(text: string): CodeShape {
  const { data, size } = encode(text, { ecc: 'M', border: quiet });
  const dark = data.flatMap((row, y) => runs(row).map(([from, length]) => `M${from} ${y}h${length}v1h-${length}z`));
  return { size, quiet, dark: dark.join('') };
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
