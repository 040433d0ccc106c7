import type { Length } from '../../units/index.js';
import { groupField, lengthField, optionalLength, textField } from '../field.js';
import type { Raw } from '../field.js';

export interface ChimneyBreast {
  readonly wall: string;
  readonly at: Length;
  readonly width: Length;
  readonly depth: Length;
  /** Absent: to the ceiling. */
  readonly height?: Length;
  readonly firebox?: { readonly width: Length; readonly height: Length; readonly sill: Length };
  readonly hearth?: {
    readonly width: Length;
    readonly depth: Length;
    readonly thickness: Length;
    readonly height: Length;
  };
}

export function read(raw: Raw): ChimneyBreast {
  const height = optionalLength(raw, 'height');
  const firebox = groupField(raw, 'firebox');
  const hearth = groupField(raw, 'hearth');
  return {
    wall: textField(raw, 'wall'),
    at: lengthField(raw, 'at'),
    width: lengthField(raw, 'width'),
    depth: lengthField(raw, 'depth'),
    ...(height === undefined ? {} : { height }),
    ...(firebox ? { firebox: readFirebox(firebox) } : {}),
    ...(hearth ? { hearth: readHearth(hearth) } : {}),
  };
}

function readFirebox(raw: Raw): NonNullable<ChimneyBreast['firebox']> {
  return { width: lengthField(raw, 'width'), height: lengthField(raw, 'height'), sill: lengthField(raw, 'sill') };
}

function readHearth(raw: Raw): NonNullable<ChimneyBreast['hearth']> {
  return {
    width: lengthField(raw, 'width'),
    depth: lengthField(raw, 'depth'),
    thickness: lengthField(raw, 'thickness'),
    height: lengthField(raw, 'height'),
  };
}
