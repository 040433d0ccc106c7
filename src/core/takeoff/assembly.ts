import { factOf } from '../fact/index.js';
import type { Assembly, Category, Option } from '../model/index.js';
import { decimalNumber, printLength, printResistance, printResistivity } from '../../base/units/index.js';
import { layerResistance, resistanceInSeries, transmittance } from './arithmetic/index.js';
import { insulationLayers } from './insulation-layers.js';
import type { AssemblyResistance, ResistanceStep } from './takeoff.js';

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

/** Parallel path: heat goes through cavity and framing side by side, each by its share of the area. Framing takes the place of
 *  the cavity's layers alone: what is continuous lies over both. */
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
  const own = insulationLayers(option);
  const outer = [...own.continuous, ...layers.map(({ what, r, source }) => ({ what, r, why: source }))];
  const filled = own.cavity.length > 0 ? resistanceInSeries(own.cavity.map(({ r }) => r)) : labelled;
  const around = outer.map(({ r }) => r);
  const wood = layerResistance(depth, framing.rPerInch);
  const [cavity, frame] = [filled, wood].map((fill) => resistanceInSeries([...around, fill])) as [number, number];
  const u = transmittance([
    { share: 1 - share, layers: [...around, filled] },
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
      fill: { what: option.name, r: filled, why: fillWords(own.cavity) },
      r: cavity,
    },
    framing: {
      share,
      fill: {
        what: framing.what,
        r: wood,
        why: `${printLength(depth)} at ${printResistivity(framing.rPerInch)}; ${framing.source}`,
      },
      r: frame,
    },
    transmittance: u,
    effective: 1 / u,
    source: 'parallel path method, ASHRAE 90.1 section A3.4, from memory',
  };
}

function fillWords(cavity: readonly ResistanceStep[]): string {
  if (cavity.length === 0) return 'as labelled';
  return cavity.map(({ what, r, why }) => `${what} ${printResistance(r)}, ${why}`).join(' + ');
}

/** `Outside wall with its framing`, for people. */
export function resistanceWords({ name, effective }: AssemblyResistance): string {
  return `${name} ${printResistance(effective, 2)} with its framing`;
}
