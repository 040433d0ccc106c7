import type { LookUp } from '../core/book/index.js';
import { words, type Block, type Sheet } from '../sheet/index.js';
import { insulation } from './insulation.js';
import { paint } from './paint.js';
import { part } from './part.js';
import { railings } from './railings.js';
import { soundWalls } from './sound-walls.js';
import { stone } from './stone.js';
import { timbers } from './timbers.js';

/** Railings, timbers, stone, insulation by assembly, sound-rated walls, paint. */
export function otherSheet(look: LookUp): Sheet {
  const { climateZone } = look.book.house;
  return {
    format: 'bookmatch/sheet/1',
    id: 'schedules',
    title: 'Railing, timber, stone, insulation, sound and paint schedules',
    paper: 'landscape',
    blocks: [
      {
        block: 'prose',
        tone: 'lead',
        of: [
          words('As measured, without waste. Finishes are on '),
          words('the room finish schedule', { to: 'page', id: 'finish-schedule.html' }),
          words(', doors with their hardware on '),
          words('doors and openings', { to: 'page', id: 'openings.html' }),
          words('.'),
        ],
      },
      ...part(look, { id: 'railing-part', title: 'Railings', of: railings }),
      ...part(look, { id: 'timber-part', title: 'Timbers', of: timbers }),
      ...part(look, { id: 'stone-part', title: 'Stone', of: stone }),
      ...part(look, {
        id: 'insulation-part',
        title: 'Insulation by assembly',
        of: insulation,
        before: [
          small(
            `${climateZone === undefined ? '' : `Climate zone ${climateZone}. `}R-values of the layers of an assembly are added up; the path through the framing is not reckoned.`,
          ),
        ],
      }),
      ...part(look, {
        id: 'sound-part',
        title: 'Sound-rated walls',
        of: soundWalls,
        before: [
          small(
            'The rating is of the wall that was tested, with the board named. It holds only where the wall is built as tested, and gaps, boxes and doors lower it.',
          ),
        ],
      }),
      ...part(look, { id: 'paint-part', title: 'Paint by room, surface and sheen', of: paint }),
    ],
  };
}

const small = (text: string): Block => ({ block: 'prose', tone: 'small', of: [words(text)] });
