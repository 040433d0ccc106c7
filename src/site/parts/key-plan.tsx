import type { VNode } from 'preact';
import type { BookRoom, KeyLevel } from '../../core/book/index.js';
import { drawKeyPlan, drawShade, screenPalette, type FloorLink, type Shade } from '../../draw/index.js';
import { numberText } from '../../base/svg/index.js';
import { Svg } from '../../write/index.js';
import { markClass, markLayer, roomWords, type Mark } from '../marks.js';
import { levelAnchor, pagePaths, roomPath } from '../paths.js';
import { useLink, useView } from '../sheet-context.js';
import { PageLink } from './link.js';

/** Inches that a level may take where there is room, and on a telephone. */
const boxes = { whole: { width: 11, height: 10 }, numbers: { width: 2.8, height: 3.6 } } as const;

/** A level with every mark that can be asked for, each in a layer of its own. On a telephone numbers alone, as wide as that is. */
export function LevelPlans({ level, marks }: { level: KeyLevel; marks: readonly Mark[] }): VNode {
  const linkOf = useRoomLinks();
  const id = `draw-${levelAnchor(level)}`;
  const layers = marks.map(markLayer);
  const whole = drawKeyPlan(level, { id, palette: screenPalette, detail: 'whole', box: boxes.whole, layers, linkOf });
  const numbers = drawKeyPlan(level, {
    id: `${id}-numbers`,
    palette: screenPalette,
    detail: 'numbers',
    box: boxes.numbers,
    bare: true,
    layers,
    linkOf,
  });
  return (
    <>
      <figure class="drawing key-plan key-whole" style={`max-width:${numberText(whole.width * 1.2)}in`}>
        <div class="scroll" role="region" aria-label={`Drawing: ${whole.title}`} tabIndex={0}>
          <Svg node={whole.svg} style={`min-width:${numberText(whole.width * 0.95)}in`} />
        </div>
      </figure>
      <figure class="drawing key-plan key-numbers">
        <Svg node={numbers.svg} />
        <figcaption class="why">Numbers are those of the rooms below.</figcaption>
      </figure>
    </>
  );
}

/** Where a room lies on its level, small. */
export function Locator({ room }: { room: BookRoom }): VNode | null {
  const view = useView();
  const linkOf = useRoomLinks();
  const level = view.levelOf(room);
  if (!level) return null;
  const { svg, width } = drawKeyPlan(level, {
    id: 'locator',
    palette: screenPalette,
    detail: 'numbers',
    box: boxes.numbers,
    bare: true,
    layers: [{ rooms: new Map([[room.slug, 'here']]) }],
    linkOf,
  });
  return (
    <figure class="drawing key-plan locator" style={`width:${numberText(width)}in`}>
      <Svg node={svg} />
      <figcaption>
        <PageLink to={`${pagePaths.house}#${levelAnchor(level)}-title`}>
          {level.name}
          {level.isApart && ', drawn apart'}
        </PageLink>
        , this room filled
      </figcaption>
    </figure>
  );
}

/** What the marks of a drawing mean, with the rooms that have them: the one that is asked for is shown. */
export function MarkLegend({ marks }: { marks: readonly Mark[] }): VNode {
  return (
    <div class="legend" aria-live="polite">
      {marks.map((mark) => (
        <ul class={`asked ${markClass(mark)}`}>
          {mark.shades.every(({ rooms }) => rooms.length === 0) && <li>{mark.none}</li>}
          {mark.shades
            .filter(({ rooms }) => rooms.length > 0)
            .map(({ shade, words, rooms }) => (
              <li>
                <ShadeSample shade={shade} id={`${markClass(mark)}-sample`} /> {words}:{' '}
                {rooms.map(({ number }) => number).join(', ')}
              </li>
            ))}
        </ul>
      ))}
    </div>
  );
}

export function ShadeSample({ shade, id }: { shade: Shade; id: string }): VNode {
  return (
    <span class="shade">
      <Svg node={drawShade(shade, { id, palette: screenPalette })} />
    </span>
  );
}

export function useRoomLinks(): (room: string) => FloorLink | undefined {
  const view = useView();
  const link = useLink();
  return (slug) => {
    const room = view.room(slug);
    return room && { href: link(roomPath(room)), words: roomWords(room, view) };
  };
}
