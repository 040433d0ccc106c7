import { inches, type Length } from '../../../base/units/index.js';

/** Resistance of a layer from its thickness and its R for an inch. Here and below resistances are in ft²·h·°F/Btu,
 *  transmittances in Btu/(ft²·h·°F). */
export function layerResistance(thickness: Length, perInch: number): number {
  return inches(thickness) * perInch;
}

/** Resistance of layers one behind another, air films among them: they add up. Source: ASHRAE 90.1 Appendix A. */
export function resistanceInSeries(layers: readonly number[]): number {
  return layers.reduce((sum, layer) => sum + layer, 0);
}

/** One way for heat through an assembly, such as the cavity or the framing. */
export interface HeatPath {
  /** Share of the area, 0 to 1; the shares of all paths add up to 1. */
  readonly share: number;
  readonly layers: readonly number[];
}

/** Transmittance of an assembly whose parts lie side by side: each part by its share. What framing takes from the R on the
 *  batt's label shows here. Source: parallel path method, ASHRAE 90.1 section A3.4. */
export function transmittance(paths: readonly HeatPath[]): number {
  return paths.reduce((sum, { share, layers }) => sum + share / resistanceInSeries(layers), 0);
}
