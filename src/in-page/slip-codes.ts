import { encodeSlip, type Slip } from '../slip/index.js';

/** Choices to a code: what a telephone's camera reads from plain paper without effort. */
const handful = 8;

/** A part of a slip for a camera to read: a whole slip by itself, with a handful of the choices. */
export interface SlipCode {
  /** `Choices 1 to 8`. */
  readonly label: string;
  readonly line: string;
}

/** The code lines of a slip on paper, one for each handful of its choices. */
export function slipCodes(slip: Slip): readonly SlipCode[] {
  const starts = Array.from({ length: Math.ceil(slip.choices.length / handful) }, (_, index) => index * handful);
  return starts.map((start) => {
    const choices = slip.choices.slice(start, start + handful);
    const [first, last] = [start + 1, start + choices.length];
    return {
      label: first === last ? `Choice ${first}` : `Choices ${first} to ${last}`,
      line: encodeSlip({ ...slip, choices }),
    };
  });
}
