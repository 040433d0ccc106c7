import { pieceLength, poundsByDensity, timberOf } from '../../feature/index.js';
import type { FeatureMeasure, Option } from '../../model/index.js';
import { feet } from '../../../base/units/index.js';
import type { TimberPieces } from '../takeoff.js';

/** The pieces of a feature, when it is timber, with what one weighs. The product's own weight comes first: it knows how wet or how hollow
 *  the timber is. */
export function orderedTimber(feature: FeatureMeasure | undefined, { weight }: Option): TimberPieces | undefined {
  const timber = feature && timberOf(feature);
  if (!timber) return undefined;
  const length = pieceLength(timber);
  const { count, density } = timber;
  const byDensity = density === undefined ? undefined : poundsByDensity(timber, length, density);
  const pounds = weight?.per === 'lin ft' ? weight.pounds * feet(length) : byDensity;
  return { count, length, ...(pounds !== undefined && { pounds }) };
}
