import type { VNode } from 'preact';
import { render } from 'preact-render-to-string';
import { svgText } from '../base/svg/index.js';
import { capital } from '../base/units/index.js';
import { openWords, readWalk } from '../draft/index.js';
import { drawWalk, screenPalette } from '../draw/index.js';
import { relativeLink } from '../site/index.js';
import { askWalk } from './ask-new.js';
import { AskForm } from './form.js';
import { deskPage, type DeskContext } from './frame.js';
import { deskPaths, deskTitles } from './paths.js';
import { inLocaleOf, type Standing } from './standing.js';

/** A room as it is walked: the plan draws itself beside the form, and says what is missing. */
export function walkPage(context: DeskContext): string {
  const { standing, start } = context;
  const link = (to: string): string => relativeLink(deskPaths.walk, to);
  const { view } = standing;
  const ask = view && inLocaleOf(standing, () => askWalk(view));
  return deskPage(
    deskPaths.walk,
    deskTitles.walk,
    context,
    <div class="desk-walk">
      {ask && <AskForm ask={ask} secret={start.secret} link={link} back={deskPaths.walk} />}
      <div id="walked" aria-live="polite" data-draws="walk-walls">
        <p>Start in a corner, and go along the walls clockwise, as seen from above.</p>
      </div>
    </div>,
  );
}

/** What was walked so far, drawn, with what is missing. */
export function walkedHtml(text: string, standing: Standing): string {
  const lines = text.split(/\r?\n/u).filter((line) => line.trim() !== '');
  return inLocaleOf(standing, () => render(<Walked lines={lines} />));
}

function Walked({ lines }: { lines: readonly string[] }): VNode {
  const whole = readWalk(lines);
  // The line that is being written is not there yet.
  const walk = whole.ok ? whole : readWalk(lines.slice(0, -1));
  if (!walk.ok) return <p>{walk.why}</p>;
  const { walked } = walk.value;
  const open = openWords(lines, walk.value);
  return (
    <>
      {walked.length > 0 && <div dangerouslySetInnerHTML={{ __html: svgText(drawWalk(walked, screenPalette)) }} />}
      {!whole.ok && <p>{[whole.why, whole.fix].filter((words) => words !== undefined).join(': ')}</p>}
      {walked.length > 2 && <p>{open === undefined ? 'The walls close.' : capital(open)} </p>}
    </>
  );
}
