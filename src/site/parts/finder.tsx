import type { VNode } from 'preact';
import type { BookRoom, KeyLevel } from '../../core/book/index.js';
import { numberText } from '../../base/svg/index.js';
import { feet } from '../../base/units/index.js';
import type { Point } from '../../core/model/index.js';
import { levelAnchor, pagePaths, roomPath } from '../paths.js';
import { roomWords } from '../marks.js';
import { useLink, useView } from '../sheet-context.js';
import { PageLink } from './link.js';

/** The rooms of every level by their outlines, at one scale: where this one is, and the way to the others. */
export function Finder({ room }: { room: BookRoom }): VNode {
  const { levels } = useView();
  return (
    <div class="finder">
      {levels.map((level) => (
        <FinderLevel level={level} here={room.slug} />
      ))}
    </div>
  );
}

function FinderLevel({ level, here }: { level: KeyLevel; here: string }): VNode {
  const view = useView();
  const link = useLink();
  const points = level.outline.flatMap(({ outline }) => outline);
  const xs = points.map(({ x }) => feet(x));
  const ys = points.map(({ y }) => feet(y));
  const [left, top] = [Math.min(...xs), Math.max(...ys)];
  const [width, height] = [Math.max(...xs) - left, top - Math.min(...ys)];
  const pathOf = (outline: readonly Point[], at: Point): string =>
    `M${outline
      .map(({ x, y }) => `${numberText(feet(x) + feet(at.x) - left, 1)} ${numberText(top - feet(y) - feet(at.y), 1)}`)
      .join('L')}Z`;
  const box = [-1, -1, width + 2, height + 2].map((value) => numberText(value, 1)).join(' ');
  const origin = { x: 0, y: 0 } as Point;
  return (
    <figure style={`flex:${numberText(width, 1)}`}>
      <svg viewBox={box} role="group" aria-label={`Rooms of the ${level.name}`}>
        <path class="finder-house" d={level.outline.map(({ outline }) => pathOf(outline, origin)).join('')} />
        {level.rooms.map(({ slug, plan, at }) => {
          const room = view.room(slug);
          if (!room) return null;
          return (
            <a href={link(roomPath(room))} aria-current={slug === here ? 'page' : undefined}>
              <title>{roomWords(room, view)}</title>
              <path d={pathOf(plan, at)} />
            </a>
          );
        })}
      </svg>
      <figcaption>
        <PageLink to={`${pagePaths.house}#${levelAnchor(level)}-title`}>
          {level.name}
          {level.isApart && ', drawn apart'}
        </PageLink>
      </figcaption>
    </figure>
  );
}
