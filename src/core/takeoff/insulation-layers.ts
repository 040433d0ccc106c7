import { factOf } from '../fact/index.js';
import type { InsulationLayer, Option } from '../model/index.js';
import { printLength, type Length, printResistance, printResistivity } from '../../base/units/index.js';
import { layerResistance, resistanceInSeries } from './arithmetic/index.js';
import type { ResistanceStep } from './takeoff.js';

/** Layers of an option's insulation: those that framing interrupts, and those outside it. */
export interface InsulationLayers {
  readonly cavity: readonly ResistanceStep[];
  readonly continuous: readonly ResistanceStep[];
}

/** As the option's record says them; none where it lists no layers. */
export function insulationLayers({ layers = [] }: Pick<Option, 'layers'>): InsulationLayers {
  const of = (place: InsulationLayer['where']) => layers.filter(({ where }) => where === place).map(layerStep);
  return { cavity: of('cavity'), continuous: of('continuous') };
}

/** A layer with its R, and where that comes from. */
export function layerStep(layer: InsulationLayer): ResistanceStep {
  const { what } = layer;
  if (!('rPerInch' in layer)) return { what, r: layer.r, why: 'as labelled' };
  const { thickness, rPerInch } = layer;
  return { what, r: layerResistance(thickness, rPerInch), why: byInch(thickness, rPerInch) };
}

/** What an option's record says of itself that its layers do not give. */
export interface LayerMismatch {
  readonly attribute: 'r-value' | 'continuous-r' | 'thickness-in-place';
  readonly typed: string;
  readonly given: string;
  /** Where the given figure comes from. */
  readonly why: string;
}

/** Labels are whole numbers: half of one is rounding. */
const rounding = 0.5;

/** Compares what is typed with what the layers give: R in the cavity, R outside the framing, thickness in the cavity. Without
 *  layers, R with thickness × R for an inch. */
export function layerMismatches(option: Pick<Option, 'layers' | 'attributes'>): readonly LayerMismatch[] {
  const [typed, continuous, thickness, rPerInch] = (
    ['r-value', 'continuous-r', 'thickness-in-place', 'r-per-inch'] as const
  ).map((name) => factOf(option, 'insulation', name)) as [
    number | undefined,
    number | undefined,
    Length | undefined,
    number | undefined,
  ];
  if (!option.layers) {
    if (typed === undefined || thickness === undefined || rPerInch === undefined) return [];
    const given = { r: layerResistance(thickness, rPerInch), why: byInch(thickness, rPerInch) };
    return resistanceDiffers('r-value', typed, given);
  }
  const layers = insulationLayers(option);
  return [
    ...(typed === undefined ? [] : resistanceDiffers('r-value', typed, added(layers.cavity))),
    ...(continuous === undefined && layers.continuous.length === 0
      ? []
      : resistanceDiffers('continuous-r', continuous ?? 0, added(layers.continuous))),
    ...thicknessDiffers(option.layers, thickness),
  ];
}

function resistanceDiffers(
  attribute: LayerMismatch['attribute'],
  typed: number,
  { r, why }: { readonly r: number; readonly why: string },
): readonly LayerMismatch[] {
  if (Math.abs(typed - r) <= rounding + 1e-9) return [];
  return [{ attribute, typed: printResistance(typed), given: printResistance(r), why }];
}

function thicknessDiffers(layers: readonly InsulationLayer[], typed: Length | undefined): readonly LayerMismatch[] {
  const each = layers.filter(({ where }) => where === 'cavity').map(({ thickness }) => thickness);
  if (typed === undefined || each.length === 0 || each.includes(undefined)) return [];
  const given = each.reduce<number>((sum, thickness) => sum + (thickness ?? 0), 0) as Length;
  if (given === typed) return [];
  const why = each.map((thickness) => printLength(thickness ?? (0 as Length))).join(' + ');
  return [{ attribute: 'thickness-in-place', typed: printLength(typed), given: printLength(given), why }];
}

function added(steps: readonly ResistanceStep[]): { readonly r: number; readonly why: string } {
  const each = steps.map(({ what, r }) => `${what} ${printResistance(r)}`).join(' + ');
  return { r: resistanceInSeries(steps.map(({ r }) => r)), why: each === '' ? 'no such layer' : each };
}

function byInch(thickness: Length, rPerInch: number): string {
  return `${printLength(thickness)} at ${printResistivity(rPerInch)}`;
}
