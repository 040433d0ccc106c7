import type { VNode } from 'preact';
import { openIn, type KeyLevel } from '../../core/book/index.js';
import { drawKeyPlan, screenPalette, type Shade } from '../../draw/index.js';
import { numberText } from '../../base/svg/index.js';
import { Svg } from '../../write/index.js';
import { levelAnchor, pagePaths } from '../paths.js';
import { useView } from '../sheet-context.js';
import { ShadeSample, useRoomLinks } from './key-plan.js';
import { PageLink } from './link.js';

/** Inches that all levels side by side may take. */
const box = { width: 4.7, height: 3.2 };

const legends = [
  { shade: 'late', words: 'late' },
  { shade: 'due-soon', words: 'due soon' },
  { shade: 'open', words: 'open' },
] as const;

/** The levels at one scale, rooms marked by what is open in them: the way to every room. */
export function HousePlans({ levels }: { levels: readonly KeyLevel[] }): VNode {
  const view = useView();
  const linkOf = useRoomLinks();
  const states = new Map(
    view.book.rooms.flatMap((room): (readonly [string, Shade])[] => {
      const state = openIn(room, view);
      return state ? [[room.slug, state]] : [];
    }),
  );
  const draw = (level: KeyLevel, width: number) =>
    drawKeyPlan(level, {
      id: `start-${levelAnchor(level)}`,
      palette: screenPalette,
      detail: 'numbers',
      box: { width, height: box.height },
      bare: true,
      layers: [{ rooms: states }],
      linkOf,
    });
  const drawn = levels.map((level) => ({ level, drawing: draw(level, box.width / Math.min(levels.length, 2)) }));
  const has = (shade: Shade): boolean => [...states.values()].includes(shade);
  return (
    <>
      <div class="house-plans">
        {drawn.map(({ level, drawing }) => (
          <figure class="drawing key-plan" style={`flex:${numberText(drawing.width)}`}>
            <Svg node={drawing.svg} />
            <figcaption>
              <PageLink to={`${pagePaths.house}#${levelAnchor(level)}-title`}>{level.name}</PageLink>
            </figcaption>
          </figure>
        ))}
      </div>
      <ul class="plan-key">
        {legends
          .filter(({ shade }) => has(shade))
          .map(({ shade, words }) => (
            <li>
              <ShadeSample shade={shade} id="start-sample" /> {words}
            </li>
          ))}
        <li>
          <span class="shade shade-none" /> all chosen
        </li>
      </ul>
    </>
  );
}
