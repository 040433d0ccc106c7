import { printResistance } from '../../../base/units/index.js';
/** R-values that the energy code's table asks for, by climate zone. Source: IECC 2021, Table R402.1.3, as the Pacific
 *  Northwest National Laboratory publishes it (basc.pnnl.gov). A wall takes one of several: R in the cavity with R that is
 *  continuous outside the framing. Zone 0 is not in that publication. */
export interface ZoneTable {
  readonly ceiling: number;
  readonly floor: number;
  readonly walls: readonly { readonly cavity: number; readonly continuous: number }[];
}

const wall = (cavity: number, continuous: number) => ({ cavity, continuous });
const cold = [wall(30, 0), wall(20, 5), wall(13, 10), wall(0, 20)];

const zones: Readonly<Record<string, ZoneTable>> = {
  1: { ceiling: 30, floor: 13, walls: [wall(13, 0), wall(0, 10)] },
  2: { ceiling: 49, floor: 13, walls: [wall(13, 0), wall(0, 10)] },
  3: { ceiling: 49, floor: 19, walls: [wall(20, 0), wall(13, 5), wall(0, 15)] },
  4: { ceiling: 60, floor: 19, walls: cold },
  marine: { ceiling: 60, floor: 30, walls: cold },
  5: { ceiling: 60, floor: 30, walls: cold },
  6: { ceiling: 60, floor: 30, walls: cold },
  7: { ceiling: 60, floor: 38, walls: cold },
  8: { ceiling: 60, floor: 38, walls: cold },
};

/** The row of a zone such as `6B`, `4C` or `7`; undefined when the table has none of that name. */
export function zoneTable(zone: string): ZoneTable | undefined {
  const [, number = '', moisture] = /^([1-8])([ABC])?$/u.exec(zone.trim().toUpperCase()) ?? [];
  return zones[number === '4' && moisture === 'C' ? 'marine' : number];
}

/** `R-30, or R-20 with R-5 outside the framing`. */
export function wallText(walls: ZoneTable['walls']): string {
  return walls
    .map(({ cavity, continuous }) => {
      if (continuous === 0) return printResistance(cavity);
      return cavity === 0
        ? `${printResistance(continuous)} all outside the framing`
        : `${printResistance(cavity)} with ${printResistance(continuous)} outside the framing`;
    })
    .join(', or ');
}
