import { expect } from 'vitest';
import type { Area } from '../../../src/base/units/index.js';
import { category, len, opening, option, room, seenBy, selection } from '../../caution/house.js';
import { published } from '../published.js';

published(
  {
    what: 'loud speech is heard as a murmur at STC 42 and no longer at 45',
    source: 'specification note 50.501, studylib.net/doc/18296149',
    mark: 'S',
  },
  () => {
    const bath = (stc: number) =>
      room({ use: 'bath', selections: [selection(['north'], category(['stc']), option({ stc }))] });
    expect(seenBy('sound-at-bath', bath(42))).toHaveLength(1);
    expect(seenBy('sound-at-bath', bath(45))).toHaveLength(0);
  },
);

published(
  {
    what: 'a floor between two dwellings is tested at IIC 50 or more',
    source: 'IBC 2018, 1206.3; no rule inside one dwelling',
    mark: 'M',
  },
  () => {
    const under = [{ room: 'bed', area: 60 as Area }];
    const over = (iic: number) => [
      room({
        level: 'upper',
        selections: [selection(['floor'], category(['build-up', 'iic']), option({ iic }))],
        measure: { around: { walls: [], outside: [], inside: [], over: [], under } },
      }),
      room({ slug: 'bed', use: 'bedroom' }),
    ];
    expect(seenBy('impact-sound', over(49))).toHaveLength(1);
    expect(seenBy('impact-sound', over(50))).toHaveLength(0);
  },
);

published(
  {
    what: 'half of the floor under 7 feet of ceiling is enough, less is not',
    source: 'IRC 2012 R305.1 exception 1, quoted on thebuildingcodeforum.com; 2021 the same',
    mark: 'S2',
  },
  () => {
    const under = (share: number) =>
      room({ measure: { headroom: { fiveFeet: 100 as Area, sevenFeet: (100 * share) as Area } } });
    expect(seenBy('headroom', under(0.5))).toHaveLength(0);
    expect(seenBy('headroom', under(0.49))).toHaveLength(1);
  },
);

published(
  {
    what: 'an 8-0 door does not fit under a nominal 8 foot wall: 97 1/8 inches rough, and 99 for the door alone',
    source: 'precut studs of 92 5/8 and three plates, a trade cost book; rough opening of 99, sunmountaindoor.com',
    mark: 'C',
  },
  () => {
    const leaf = option({ 'rough-height': '3"', height: `8'` });
    const selections = [selection(['D1'], category(['rough-height']), leaf)];
    const top = [
      { along: len('0"'), height: len('97 1/8"') },
      { along: len(`10'`), height: len('97 1/8"') },
    ];
    const base = room({ selections, measure: { openings: [opening({ height: len(`8'`) })] } });
    const walls = base.measure.walls.map((one) => ({ ...one, top }));
    const low = { ...base, measure: { ...base.measure, walls } };
    expect(seenBy('door-under-slope', low)).toHaveLength(1);
  },
);

published(
  {
    what: 'a level change of 1/4 inch needs nothing, more needs a bevel',
    source: 'ADA Standards 2010, 303.2 and 303.3, foamjackgeotech.com/a-d-a-compliance',
    mark: 'S2',
  },
  () => {
    const floor = (height: string) => [selection(['floor'], category(['build-up']), option({ 'build-up': height }))];
    const pair = (there: string) => [
      room({ selections: floor('3/4"'), measure: { openings: [opening()] } }),
      room({ slug: 'beside', selections: floor(there) }),
    ];
    expect(seenBy('floor-build-up', pair('1/2"'))).toHaveLength(0);
    expect(seenBy('floor-build-up', pair('7/16"'))).toHaveLength(1);
  },
);

published(
  {
    what: 'paper-faced board is no tile backer in wet areas since 2006; fiber cement, cement and glass mat are',
    source: 'IRC R702.4.2, codeoperative.net irc18_702.4.2 and wconline.com/articles/84062',
    mark: 'S',
  },
  () => {
    const tiled = (substrate: string) =>
      room({ use: 'bath', selections: [selection(['north'], category(['wet-floor']), option({ substrate }))] });
    expect(seenBy('wet-room', tiled('gypsum board'))).toHaveLength(1);
    for (const backer of ['cement backer', 'fiber-cement backer', 'glass-mat gypsum'])
      expect(seenBy('wet-room', tiled(backer))).toHaveLength(0);
  },
);

published(
  {
    what: 'a jamb of 4 9/16 inches is for a 2x4 wall with half-inch board on both sides',
    source: "door shops' sheets, learn.doornmore.com/jamb-size and engineerfix.com",
    mark: 'S',
  },
  () => {
    const board = (place: string) =>
      selection([place], category(['board-thickness']), option({ 'board-thickness': '1/2"' }));
    const door = selection(['D1'], category(['jamb']), option({ jamb: '4 9/16"' }));
    const rooms = [
      room({ selections: [door, board('north')], measure: { openings: [opening()] } }),
      room({
        slug: 'beside',
        selections: [board('south')],
        measure: { openings: [opening({ to: 'room', own: false, wall: 'south' })] },
      }),
    ];
    expect(seenBy('jamb-depth', rooms)).toHaveLength(0);
  },
);

published(
  {
    what: 'level 5 under gloss and semi-gloss',
    source: 'GA-214, quoted on harborpaints.com and denvercsi.org',
    mark: 'S2',
  },
  () => {
    const painted = (sheen: string, level: number) => {
      const under = selection(['north'], category(['level']), option({ level }));
      return room({ selections: [selection(['north'], category(['sheen']), option({ sheen })), under] });
    };
    for (const sheen of ['gloss', 'semi-gloss']) {
      expect(seenBy('sheen-over-level', painted(sheen, 4))).toHaveLength(1);
      expect(seenBy('sheen-over-level', painted(sheen, 5))).toHaveLength(0);
    }
  },
);
