import type { Length } from '../../../base/units/index.js';
import { groupField, lengthField, optionalLength, textField, yesField, type Raw } from '../field.js';

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
  /** A shelf on the front: its underside above the floor, and how far it stands out. */
  readonly mantel?: { readonly height: Length; readonly projection: Length; readonly isCombustible?: boolean };
  /** What carries the stone on it. */
  readonly bearsOn?: 'concrete' | 'framing';
}

export function read(raw: Raw): ChimneyBreast {
  const height = optionalLength(raw, 'height');
  const firebox = groupField(raw, 'firebox');
  const hearth = groupField(raw, 'hearth');
  const mantel = groupField(raw, 'mantel');
  const bearsOn = textField(raw, 'bears-on');
  return {
    wall: textField(raw, 'wall'),
    at: lengthField(raw, 'at'),
    width: lengthField(raw, 'width'),
    depth: lengthField(raw, 'depth'),
    ...(height === undefined ? {} : { height }),
    ...(firebox ? { firebox: readFirebox(firebox) } : {}),
    ...(hearth ? { hearth: readHearth(hearth) } : {}),
    ...(mantel ? { mantel: readMantel(mantel) } : {}),
    ...(bearsOn === 'concrete' || bearsOn === 'framing' ? { bearsOn } : {}),
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

function readMantel(raw: Raw): NonNullable<ChimneyBreast['mantel']> {
  const isCombustible = yesField(raw, 'is-combustible');
  return {
    height: lengthField(raw, 'height'),
    projection: lengthField(raw, 'projection'),
    ...(isCombustible === undefined ? {} : { isCombustible }),
  };
}
