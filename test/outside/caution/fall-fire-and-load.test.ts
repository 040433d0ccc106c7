import { expect } from 'vitest';
import type { RoomView } from '../../../src/core/caution/index.js';
import type { Area } from '../../../src/base/units/index.js';
import { category, feature, len, measuredBy, option, room, seenBy, selection } from '../../caution/house.js';
import { published } from '../published.js';

const railing = category(['height'], { ...measuredBy('railing') });
const stone = category(['kind'], { ...measuredBy('stone') });

function gallery(drop: string, rail?: Record<string, string>): RoomView {
  const features = [feature('drop-edge', 'edge', {}, { drop: len(drop) })];
  return room({ selections: rail ? [selection(['edge'], railing, option(rail))] : [], measure: { features } });
}

published(
  {
    what: 'a guard is wanted where the drop is MORE than 30 inches',
    source: 'IRC 2018 R312.1.1, jeffco.us/2088/Guards',
    mark: 'S',
  },
  () => {
    expect(seenBy('guard-at-drop', gallery('30"'))).toHaveLength(0);
    expect(seenBy('guard-at-drop', gallery('30 1/16"'))).toHaveLength(1);
  },
);

published(
  { what: 'a guard is not less than 36 inches high', source: 'IRC 2018 R312.1.2, jeffco.us/2088/Guards', mark: 'S' },
  () => {
    expect(seenBy('guard-at-drop', gallery(`10'`, { height: '36"', 'clear-opening': '3"' }))).toHaveLength(0);
    expect(seenBy('guard-at-drop', gallery(`10'`, { height: '35"', 'clear-opening': '3"' }))).toHaveLength(1);
  },
);

published(
  {
    what: 'a sphere of 4 inches must not pass, so that an opening of 4 inches is one too many',
    source: 'IRC 2018 R312.1.3, jeffco.us/2088/Guards and Camden County on codelibrary.amlegal.com',
    mark: 'S',
  },
  () => {
    expect(seenBy('guard-opening', gallery(`10'`, { height: '36"', 'clear-opening': '3 15/16"' }))).toHaveLength(0);
    expect(seenBy('guard-opening', gallery(`10'`, { height: '36"', 'clear-opening': '4"' }))).toHaveLength(1);
    // Nor beside the end of a guard, along a side of 10'.
    const ending = (run: string) =>
      room({
        measure: {
          features: [
            feature('drop-edge', 'edge', { wall: 'north', at: len('0"'), run: len(run) }, { drop: len(`10'`) }),
          ],
        },
      });
    expect(seenBy('rail-in-air', ending(`9'-8 1/16"`))).toHaveLength(0);
    expect(seenBy('rail-in-air', ending(`9'-8"`))).toHaveLength(1);
  },
);

published(
  {
    what: 'a level that is lived on is reached by a stair or a ramp',
    source: 'IRC 2018 R311.4, from memory',
    mark: 'M',
  },
  () => {
    const above = room({ slug: 'above', level: 'upper' });
    expect(seenBy('way-up', [room(), above], { levels: ['main', 'upper'] })).toHaveLength(1);
    expect(seenBy('way-up', [room(), above], { levels: ['upper'] })).toHaveLength(0);
  },
);

published(
  {
    what: 'the largest stair of the code, risers of 7 3/4 and treads of 10 inches, 36 wide, is a stair',
    source: 'IRC 2018 R311.7, jeffco.us/2095/Stairways',
    mark: 'S',
  },
  () => {
    const stair = { rise: len('124"'), risers: 16, going: len('10"'), width: len('36"'), rails: 0 };
    const below = room({ measure: { features: [feature('stair', 'stair', stair)] } });
    const above = room({ slug: 'above', level: 'upper' });
    expect(seenBy('only-way-up', [below, { ...above }], { levels: ['main', 'upper'] })).toHaveLength(0);
  },
);

published(
  {
    what: 'headroom over a stair is not less than 6 ft 8 in',
    source: 'IRC 2018 R311.7.2, jeffco.us/2095/Stairways',
    mark: 'S',
  },
  () => {
    const under = (height: string): RoomView => {
      const stair = { rise: len('124"'), risers: 16, going: len('10"'), width: len('36"'), rails: 0, handrails: 1 };
      const headroom = { height: len(height), along: len('30"') };
      return room({ measure: { features: [feature('stair', 'stair', stair, { headroom })] } });
    };
    expect(seenBy('stair-headroom', under(`6'-8"`))).toHaveLength(0);
    expect(seenBy('stair-headroom', under(`6'-7 15/16"`))).toHaveLength(1);
  },
);

published(
  {
    what: 'a ship ladder of risers 9 1/2 on treads of 5 inches may serve 200 sq ft alone, and not more',
    source: 'IRC 2018 R311.7.12 with its exception, codeoperative.net irc18_311.7.12.0',
    mark: 'S',
  },
  () => {
    const ladder = { rise: len('95"'), risers: 10, going: len('5"'), width: len('20"'), rails: 0 };
    const below = room({ measure: { features: [feature('stair', 'ladder', ladder)] } });
    const loft = (area: number): RoomView => {
      const above = room({ slug: 'loft', level: 'upper', use: 'gallery' });
      return { ...above, measure: { ...above.measure, floor: { ...above.measure.floor, gross: area as Area } } };
    };
    expect(seenBy('only-way-up', [below, loft(200)], { levels: ['main', 'upper'] })).toHaveLength(0);
    expect(seenBy('only-way-up', [below, loft(201)], { levels: ['main', 'upper'] })).toHaveLength(1);
  },
);

/** A wood fire with an opening of so many inches and a hearth that reaches so far to the front and to each side. */
function fire(width: number, height: number, front: number, side: number): RoomView {
  const inch = (inches: number) => len(`${inches}"`);
  const breast = {
    wall: 'north',
    at: inch(0),
    width: inch(96),
    depth: inch(24),
    firebox: { width: inch(width), height: inch(height), sill: inch(12) },
    hearth: { width: inch(width + 2 * side), depth: inch(front), thickness: inch(2), height: inch(2) },
  };
  const unit = selection(['breast'], category(['fuel'], { layer: 'fixture' }), option({ fuel: 'wood' }));
  return room({ selections: [unit], measure: { features: [feature('chimney-breast', 'breast', breast)] } });
}

published(
  {
    what: 'hearth of 16 and 8 inches under 6 sq ft, of 20 and 12 from exactly 6 sq ft',
    source: 'IRC 2006 R1001.10, quoted in inspectorsjournal.com/topic/6353',
    mark: 'S2',
  },
  () => {
    // 36 x 23 is 5.75 sq ft, 36 x 24 is 6.
    expect(seenBy('hearth-extension', fire(36, 23, 16, 8))).toHaveLength(0);
    expect(seenBy('hearth-extension', fire(36, 24, 16, 8))).toHaveLength(1);
    expect(seenBy('hearth-extension', fire(36, 24, 20, 12))).toHaveLength(0);
  },
);

published(
  {
    what: 'a mantel 8 inches above the opening stands out at most 1 inch',
    source: 'IRC R1001.11 exception 4: 1/8 inch for each inch within 12 inches',
    mark: 'M',
  },
  () => {
    const shelf = (projection: string): RoomView => {
      const base = fire(36, 24, 20, 12);
      const [breast] = base.measure.features;
      if (!breast) throw new Error('no breast');
      const mantel = { height: len('44"'), projection: len(projection), isCombustible: true };
      const data = { ...(breast.data as object), mantel };
      return { ...base, measure: { ...base.measure, features: [{ ...breast, data }] } };
    };
    expect(seenBy('combustible-near-fire', shelf('1"'))).toHaveLength(0);
    expect(seenBy('combustible-near-fire', shelf('1 1/8"'))).toHaveLength(1);
  },
);

published(
  {
    what: 'half an inch of gypsum board is a thermal barrier over foam',
    source: 'IRC R316.4, quoted on justanswer.com, and IBC 2603.4 on legalclarity.org',
    mark: 'S2',
  },
  () => {
    const foam = selection(['north'], category(['needs-cover']), option({ 'needs-cover': true }));
    const board = (thickness: string) =>
      selection(['north'], category(['board-thickness']), option({ 'board-thickness': thickness }));
    expect(seenBy('thermal-barrier', room({ selections: [foam, board('1/2"')] }))).toHaveLength(0);
    expect(seenBy('thermal-barrier', room({ selections: [foam, board('3/8"')] }))).toHaveLength(1);
  },
);

published(
  {
    what: '5 inches of stone at 150 pounds a cubic foot is 62.5 psf, over the 50 of the table; 4 inches is exactly 50',
    source: 'IRC R703.8 and Table R703.8(1), up.codes; the worked stone is in thebuildingcodeforum.com post 287839',
    mark: 'C',
  },
  () => {
    const breast = feature('chimney-breast', 'breast', { bearsOn: 'concrete' });
    const bed = (inches: number): RoomView => {
      const weight = { pounds: (inches / 12) * 150, per: 'sq ft' } as const;
      const slab = option({ kind: 'full bed', bed: `${inches}"`, 'mortar-weight': 0 }, { weight });
      return room({ selections: [selection(['breast'], stone, slab)], measure: { features: [breast] } });
    };
    expect(seenBy('full-bed-support', bed(5))[0]?.seen).toContain('62.5 lb');
    expect(seenBy('full-bed-support', bed(4))).toHaveLength(0);
  },
);

published(
  {
    what: 'adhered veneer outside of 15 pounds a square foot passes before 2022, more does not',
    source: 'TMS 402-16 12.3; the 15 psf and its rise to 30 in TMS 402-22: laticrete.com, how TMS code changes',
    mark: 'S2',
  },
  () => {
    const thin = (pounds: number): RoomView => {
      const slip = option({ kind: 'cast', bed: '1"' }, { weight: { pounds, per: 'sq ft' } });
      return room({ use: 'porch', selections: [selection(['north'], stone, slip)] });
    };
    expect(seenBy('adhered-facing-outside', thin(15))).toHaveLength(0);
    expect(seenBy('adhered-facing-outside', thin(16))).toHaveLength(1);
  },
);

published(
  {
    what: 'adhered veneer inside weighs at most 20 pounds a square foot',
    source: 'IBC 2018 1404.10.3 (2015: 1405.10.3)',
    mark: 'M',
  },
  () => {
    const thin = (mortar: number): RoomView => {
      const slip = option(
        { kind: 'cast', bed: '1"', 'mortar-weight': mortar },
        { weight: { pounds: 12, per: 'sq ft' } },
      );
      return room({ selections: [selection(['north'], stone, slip)] });
    };
    expect(seenBy('adhered-facing', thin(8))).toHaveLength(0);
    expect(seenBy('adhered-facing', thin(9))).toHaveLength(1);
  },
);

published(
  {
    what: 'R-49 in a ceiling of zone 6 was the table until 2018 and is below that of 2021',
    source: 'IECC 2012-2018 and 2021, basc.pnnl.gov/information/2009-2021-iecc-and-irc-minimum-insulation-requirements',
    mark: 'S',
  },
  () => {
    const ceiling = selection(['ceiling'], category(['r-value']), option({ 'r-value': 49 }));
    expect(seenBy('insulation-by-zone', room({ selections: [ceiling] }))[0]?.says).toContain('R-60');
    expect(seenBy('insulation-by-zone', room({ selections: [ceiling] }), { climateZone: '3A' })).toHaveLength(0);
  },
);

published(
  {
    what: 'Florida zone 1A: a wall of R-13 or R-10 outside the framing',
    source: 'IECC 2021, basc.pnnl.gov/building-assemblies/1a',
    mark: 'S',
  },
  () => {
    const wall = (attributes: Record<string, number>) =>
      room({ selections: [selection(['north'], category(['r-value']), option(attributes))] });
    const zone = { climateZone: '1A' };
    expect(seenBy('insulation-by-zone', wall({ 'r-value': 13 }), zone)).toHaveLength(0);
    expect(seenBy('insulation-by-zone', wall({ 'r-value': 0, 'continuous-r': 10 }), zone)).toHaveLength(0);
    expect(seenBy('insulation-by-zone', wall({ 'r-value': 11 }), zone)).toHaveLength(1);
  },
);
