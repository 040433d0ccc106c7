import type { VNode } from 'preact';
import { numberText } from '../../base/svg/index.js';
import type { HandoutLevel, HandoutRoom } from '../../handout/index.js';
import { Svg } from '../../write/index.js';
import { useHandout, useHandoutLink } from './context.js';
import { drawHandoutLevel } from './drawings.js';
import { roomPath } from './paths.js';

/** The levels where the trade works, its rooms marked. */
export function TradeLevels(): VNode {
  const { levels, rooms } = useHandout();
  const own = new Set<string>(rooms.map(({ slug }) => slug));
  return (
    <div class="trade-levels">
      {levels
        .filter((level) => level.rooms.some(({ slug }) => own.has(slug)))
        .map((level) => (
          <Level level={level} says="marked: where you work" />
        ))}
    </div>
  );
}

/** Where a room lies. */
export function RoomLevel({ room }: { room: HandoutRoom }): VNode | null {
  const { levels } = useHandout();
  const level = levels.find(({ rooms }) => rooms.some(({ slug }) => slug === room.slug));
  return level ? <Level level={level} here={room} says="filled: this room; marked: where else you work" /> : null;
}

function Level({ level, here, says }: { level: HandoutLevel; here?: HandoutRoom; says: string }): VNode {
  const handout = useHandout();
  const link = useHandoutLink();
  const linkOf = (room: HandoutRoom): string => link(roomPath(room));
  const { svg, width } = drawHandoutLevel(level, handout, { linkOf, ...(here && { here }) });
  return (
    <figure class="drawing key-plan locator" style={`width:${numberText(width)}in`}>
      <Svg node={svg} />
      <figcaption>
        {level.name}
        {level.isApart && ', drawn apart'}; {says}
      </figcaption>
    </figure>
  );
}
