import type { ComponentChildren, VNode } from 'preact';
import { say, type HouseCell, type Line, type Place, type Run } from '../../sheet/index.js';
import { SignMark } from './sign.js';
import { Swing } from './swing.js';

/** Where a place is, as a link from the page that is written; undefined where it has no page. */
export type Links = (place: Place) => string | undefined;

/** A cell as people read it. */
export function CellHtml({ cell, links, point = 0 }: { cell: HouseCell; links: Links; point?: number }): VNode {
  if (cell.is === 'swing') return <Swing of={cell} />;
  const lines = say(cell);
  if (cell.is !== 'lines') return <LineHtml line={lines.flat()} links={links} point={point} />;
  return (
    <ul class="keys">
      {lines.map((line) => (
        <li>
          <LineHtml line={line} links={links} point={point} />
        </li>
      ))}
    </ul>
  );
}

function LineHtml({ line, links, point = 0 }: { line: Line; links: Links; point?: number }): VNode {
  return (
    <>
      {line.map((run) => (
        <RunHtml run={run} links={links} point={point} />
      ))}
    </>
  );
}

function RunHtml({ run, links, point }: { run: Run; links: Links; point: number }): VNode {
  const { text, tone, place, figure, sign } = run;
  const href = place && links(place);
  const said: ComponentChildren =
    figure === undefined ? text : <Figure text={text} point={Math.max(point, figure)} tone={tone} />;
  const body = sign ? (
    <span class={`state state-${sign}`}>
      <SignMark of={sign} /> {said}
    </span>
  ) : (
    said
  );
  if (href !== undefined) {
    return (
      <a href={href} class={tone === 'mark' ? 'mark' : undefined}>
        {body}
      </a>
    );
  }
  const plain = figure !== undefined || sign !== undefined || tone === undefined;
  return plain ? <>{body}</> : <span class={tone}>{body}</span>;
}

/** A number whose point stands under the points above it: what follows the point has a fixed width. */
function Figure({ text, point, tone }: { text: string; point: number; tone: Run['tone'] }): VNode {
  const at = text.indexOf('.');
  const [whole, rest] = at < 0 ? [text, ''] : [text.slice(0, at), text.slice(at)];
  return (
    <span class={tone === 'quiet' ? 'figure quiet' : 'figure'}>
      {whole}
      {point > 0 ? <span class={`part part-${point}`}>{rest}</span> : rest}
    </span>
  );
}
