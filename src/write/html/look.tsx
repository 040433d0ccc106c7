import type { ComponentChildren, VNode } from 'preact';
import { numberText } from '../../base/svg/index.js';
import { pictureWords, type Cutaway, type Drawing, type Key } from '../../draw/index.js';
import { SignMark } from './sign.js';
import { Svg } from './svg.js';

/** A room as it will look: numbers in the picture, and beside it what they stand for. */
export function LookHtml({ drawing, keys, unseen }: Pick<Cutaway, 'drawing' | 'keys' | 'unseen'>): VNode {
  return (
    <>
      <DrawnPicture drawing={drawing} />
      <LookWords keys={keys} unseen={unseen} />
    </>
  );
}

/** What the numbers of a picture stand for, and what it does not show. */
export function LookWords({ keys, unseen }: Pick<Cutaway, 'keys' | 'unseen'>): VNode {
  const numbered = keys.filter(({ number }) => number !== undefined);
  const others = keys.filter(({ number }) => number === undefined);
  return (
    <div class="look-words">
      <Keys keys={numbered} />
      {others.length + unseen.length > 0 && (
        <details>
          <summary>{restWords(others.length, unseen.length)}</summary>
          <Keys keys={others} />
          {unseen.length > 0 && (
            <p>Not drawn, since it is on what was taken away, or its place or size is not recorded:</p>
          )}
          <Keys keys={unseen} />
        </details>
      )}
      <p class="why">{pictureWords}</p>
    </div>
  );
}

function restWords(others: number, unseen: number): string {
  const parts = [others > 0 ? `${others} more drawn, without a number` : '', unseen > 0 ? `${unseen} not drawn` : ''];
  return parts.filter((part) => part !== '').join('; ');
}

/** What numbers stand for. */
export function Keys({ keys }: { keys: readonly Key[] }): VNode | null {
  if (keys.length === 0) return null;
  return (
    <dl class="look-keys">
      {keys.map(({ number, at, finish, isOpen }) => (
        <div>
          <dt>
            {number !== undefined && <span class="look-number">{number}</span>} {at}
          </dt>
          <dd>
            {isOpen && <SignMark of="open" />} {finish}
          </dd>
        </div>
      ))}
    </dl>
  );
}

/** A picture in the page itself, on its card of paper. */
export function DrawnPicture({ drawing, children }: { drawing: Drawing; children?: ComponentChildren }): VNode {
  return (
    <figure class="picture" style={`max-width:${numberText(drawing.width * 1.15)}in`}>
      <div class="picture-card">
        <Svg node={drawing.svg} />
      </div>
      {children !== undefined && <figcaption>{children}</figcaption>}
    </figure>
  );
}
