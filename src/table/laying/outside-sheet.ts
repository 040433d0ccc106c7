import type { LookUp } from '../../core/book/index.js';
import { knownAround } from '../../core/model/index.js';
import { joinWords } from '../../base/units/index.js';
import { words, type Block, type Sheet } from '../../sheet/index.js';
import { part } from '../part.js';
import { roomsOver } from './over.js';
import { roofCeilings } from './roof.js';
import { outsideWalls } from './walls.js';

/** What of each room stands outside, lies under the roof, and over what. */
export function outsideSheet(look: LookUp): Sheet {
  return {
    format: 'bookmatch/sheet/1',
    id: 'outside',
    title: 'Outside walls and roof',
    paper: 'portrait',
    blocks: [
      {
        block: 'prose',
        tone: 'lead',
        of: [
          words('As the house is laid out from its rooms’ own tapes: where doors, open sides and walls put the rooms.'),
        ],
      },
      ...unknown(look),
      ...part(look, { id: 'outside-part', title: 'Outside walls', of: outsideWalls }),
      ...part(look, { id: 'roof-part', title: 'Under the roof', of: roofCeilings }),
      ...part(look, { id: 'over-part', title: 'Over one another', of: roomsOver }),
    ],
  };
}

/** Rooms of which it is not told what lies around them. */
function unknown({ book }: LookUp): readonly Block[] {
  const names = book.rooms.filter(({ measure }) => !knownAround(measure)).map(({ name }) => name);
  if (names.length === 0) return [];
  const text = `Not all is known of what lies around ${joinWords(names)}: nothing joins them to the whole house, or the levels do not say how high their floors lie. What of their walls stands outside is told by openings alone, and they are not in the lists by room.`;
  return [{ block: 'prose', tone: 'small', of: [words(text)] }];
}
