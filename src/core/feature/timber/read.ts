import { fromMetric, type Length } from '../../../base/units/index.js';
import { lengthField, lengthsField, numberField, optionalLength, textField, type Raw } from '../field.js';

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
  /** Where the pieces are, where the record says so. */
  readonly place?: TimberPlace;
}

export type TimberRun = 'east-west' | 'north-south' | 'upright';

/** Where pieces are, from the south-west corner of the room's plan: one at each station, or one under each slope there. */
export interface TimberPlace {
  readonly run: TimberRun;
  /** Middle of the first station, across the run: north of the corner for pieces that run east-west and for posts, else east of it. */
  readonly at: Length;
  /** From station to station. */
  readonly spacing?: Length;
  /** Where the clear length begins along the run; of posts, how far east their middle is; under a slope, in plan from its low end. */
  readonly from: Length;
  /** Above the room's floor; of posts, of the foot. A record that is not in error has this or `follows`. */
  readonly underside?: Length;
  /** They lie right under the slopes of the ceiling. */
  readonly follows?: 'ceiling';
}

export function read(raw: Raw): Timber {
  const [species, joinery] = [textField(raw, 'species'), textField(raw, 'joinery')];
  const [first = 0, second = 0] = lengthsField(raw, 'end-allowances');
  const density = readDensity(textField(raw, 'density'));
  const place = readPlace(raw);
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
    ...(place && { place }),
  };
}

function readPlace(raw: Raw): TimberPlace | undefined {
  const run = textField(raw, 'run');
  if (run !== 'east-west' && run !== 'north-south' && run !== 'upright') return undefined;
  const [spacing, underside] = [optionalLength(raw, 'spacing'), optionalLength(raw, 'underside')];
  return {
    run,
    at: lengthField(raw, 'at'),
    ...(spacing !== undefined && { spacing }),
    from: lengthField(raw, 'from'),
    ...(underside !== undefined && { underside }),
    ...(textField(raw, 'follows') === 'ceiling' && { follows: 'ceiling' as const }),
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
