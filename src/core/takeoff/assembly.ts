import { factOf } from '../fact/index.js';
import type { Assembly, Category, Option } from '../model/index.js';
import { decimalNumber, printAmount, printLength, printResistance } from '../../base/units/index.js';
import { layerResistance, resistanceInSeries, transmittance } from './arithmetic/index.js';
import type { AssemblyResistance } from './takeoff.js';

/** The category's assemblies with an option in their cavity, of those kinds that the places are of: walls, ceiling, floor.
 *  Empty where there are none or the option gives no R. */
export function assembliesOf(
  { assemblies = [] }: Pick<Category, 'assemblies'>,
  option: Option,
  places: readonly { readonly id: string; readonly over: Assembly['over'] }[],
): readonly AssemblyResistance[] {
  return assemblies.flatMap((assembly) => {
    const own = places.filter(({ over }) => over === assembly.over).map(({ id }) => id);
    const resistance = own.length === 0 ? undefined : resist(assembly, option, own);
    return resistance ? [resistance] : [];
  });
}

/** Parallel path: heat goes through cavity and framing side by side, each by its share of the area. */
function resist(
  { name, over, framing, layers }: Assembly,
  option: Option,
  places: readonly string[],
): AssemblyResistance | undefined {
  const labelled = factOf(option, 'insulation', 'r-value');
  const thickness = factOf(option, 'insulation', 'thickness-in-place');
  const depth = framing.depth ?? thickness;
  if (labelled === undefined || depth === undefined) return undefined;
  const share = decimalNumber(framing.share);
  const outer = layers.map(({ what, r, source }) => ({ what, r, why: source }));
  const around = outer.map(({ r }) => r);
  const wood = layerResistance(depth, framing.rPerInch);
  const [cavity, frame] = [labelled, wood].map((fill) => resistanceInSeries([...around, fill])) as [number, number];
  const u = transmittance([
    { share: 1 - share, layers: [...around, labelled] },
    { share, layers: [...around, wood] },
  ]);
  return {
    name,
    over,
    places,
    labelled,
    layers: outer,
    cavity: {
      share: 1 - share,
      fill: { what: option.name, r: labelled, why: 'as labelled' },
      r: cavity,
    },
    framing: {
      share,
      fill: {
        what: framing.what,
        r: wood,
        why: `${printLength(depth)} at R-${printAmount(framing.rPerInch, 2)} for an inch; ${framing.source}`,
      },
      r: frame,
    },
    transmittance: u,
    effective: 1 / u,
    source: 'parallel path method, ASHRAE 90.1 section A3.4, from memory',
  };
}

/** `Outside wall with its framing`, for people. */
export function resistanceWords({ name, effective }: AssemblyResistance): string {
  return `${name} ${printResistance(effective, 2)} with its framing`;
}
