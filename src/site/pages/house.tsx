import type { VNode } from 'preact';
import type { KeyLevel } from '../../core/book/index.js';
import { printArea, printLength } from '../../base/units/index.js';
import { houseSheet } from '../../table/index.js';
import { BlocksHtml } from '../../write/index.js';
import { markClass, marksOf, type Mark } from '../marks.js';
import { LevelPlans, MarkLegend } from '../parts/key-plan.js';
import { PageLink } from '../parts/link.js';
import { levelAnchor, pagePaths, roomPath } from '../paths.js';
import { placeLinks } from '../place-links.js';
import { useSheet, useView } from '../sheet-context.js';

/** The house from above, level by level, its rooms marked by what is asked. */
export function HousePage(): VNode {
  const { view, path } = useSheet();
  const { title, blocks } = houseSheet(view);
  const [lead] = blocks;
  const links = placeLinks(view, path);
  const marks = marksOf(view);
  return (
    <>
      <h1>{title}</h1>
      {lead && <BlocksHtml blocks={[lead]} links={links} />}
      <div class="marks">
        <MarkChoice marks={marks} />
        <MarkLegend marks={marks} />
        <div class="key-levels">
          {view.levels.map((level) => (
            <LevelSection level={level} marks={marks} />
          ))}
        </div>
      </div>
      <p>
        What each level has in figures: <PageLink to={pagePaths.areas}>{areasTitle}</PageLink>.
      </p>
    </>
  );
}

export const areasTitle = 'Areas, faces and walls';

/** What the levels have: areas, outside faces, walls between rooms. */
export function AreasPage(): VNode {
  const { view, path } = useSheet();
  const [, ...tables] = houseSheet(view).blocks;
  return (
    <>
      <h1>{areasTitle}</h1>
      <BlocksHtml blocks={tables} links={placeLinks(view, path)} />
    </>
  );
}

function MarkChoice({ marks }: { marks: readonly Mark[] }): VNode {
  return (
    <fieldset class="mark-choice">
      <legend>Mark the rooms by</legend>
      {marks.map((mark, index) => (
        <label>
          <input type="radio" name="mark" id={markClass(mark)} checked={index === 0} /> {mark.label}
        </label>
      ))}
      <label>
        <input type="radio" name="mark" id="mark-nothing" /> Nothing
      </label>
    </fieldset>
  );
}

function LevelSection({ level, marks }: { level: KeyLevel; marks: readonly Mark[] }): VNode {
  const view = useView();
  const anchor = levelAnchor(level);
  return (
    <section class="key-level" aria-labelledby={`${anchor}-title`}>
      <h2 id={`${anchor}-title`}>
        {level.name}
        {level.isApart && ', drawn apart'}
      </h2>
      <p class="why">
        {printArea(level.net)} net, {printArea(level.gross)} gross, {printLength(level.perimeter)} around.
      </p>
      <LevelPlans level={level} marks={marks} />
      <ul class="key-rooms">
        {level.rooms
          .flatMap(({ slug }) => view.room(slug) ?? [])
          .map((room) => (
            <li>
              <PageLink to={roomPath(room)}>
                <span class="mark">{room.number}</span> {room.name}
              </PageLink>
            </li>
          ))}
      </ul>
    </section>
  );
}
