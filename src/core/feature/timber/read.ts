import { fromMetric, type Length } from '../../../base/units/index.js';
import { lengthField, lengthsField, numberField, textField, type Raw } from '../field.js';

export interface Timber {
  readonly count: number;
  /** Clear, between what it is joined to. */
  readonly length: Length;
  /** What is added at its two ends. */
  readonly ends: readonly [Length, Length];
  /** Dressed section, the smaller side first by custom. */
  readonly width: Length;
  readonly depth: Length;
  /** The section is written in millimeters: it is sawn to that size, and no inch size stands for it. */
  readonly isMetric: boolean;
  /** How its ends are cut and joined. */
  readonly joinery?: string;
  /** Sides that are seen: of a beam under a ceiling three. */
  readonly sides: 3 | 4;
  readonly species?: string;
  /** Pounds for each cubic foot. */
  readonly density?: number;
}

export function read(raw: Raw): Timber {
  const [species, joinery] = [textField(raw, 'species'), textField(raw, 'joinery')];
  const [first = 0, second = 0] = lengthsField(raw, 'end-allowances');
  const density = readDensity(textField(raw, 'density'));
  return {
    count: numberField(raw, 'count', 0),
    length: lengthField(raw, 'length'),
    width: lengthField(raw, 'width'),
    depth: lengthField(raw, 'depth'),
    ends: [first as Length, second as Length],
    isMetric: [textField(raw, 'width'), textField(raw, 'depth')].some((text) => /[\d\s](?:mm|cm|m)\s*$/u.test(text)),
    ...(joinery === '' ? {} : { joinery }),
    sides: numberField(raw, 'sides', 4) === 3 ? 3 : 4,
    ...(species === '' ? {} : { species }),
    ...(Number.isNaN(density) ? {} : { density }),
  };
}

/** Pounds for each cubic foot. */
function readDensity(text: string): number {
  const number = Number.parseFloat(text);
  return text.includes('kg') ? fromMetric(number, 'lb / cu ft') : number;
}

/** Length of a piece as it is ordered. */
export function pieceLength({ length, ends: [first, second] }: Pick<Timber, 'length' | 'ends'>): Length {
  return (length + first + second) as Length;
}
