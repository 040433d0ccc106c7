import type { VNode } from 'preact';
import type { BookOption } from '../../core/book/index.js';
import {
  drawSwatch,
  sampleFacts,
  screenPalette,
  trimJointsDrawer,
  type Drawing,
  type MaterialFacts,
} from '../../draw/index.js';
import { numberText } from '../../base/svg/index.js';
import { Svg } from '../../write/index.js';
import { swatchPath, swatchSizes } from '../drawings.js';
import { useLink } from '../sheet-context.js';

/** A drawing as wide as its column, larger when it is tapped. `--in` is its width on paper in inches: larger, its letters are read.
 *  What a small screen leaves out until then is a class of the drawing; what is left then has the whole width: `--plain` is its width, `--left` and
 *  `--top` where it begins, in shares of the drawing's, `--ratio` its width to its height. */
export function DrawingFigure({ drawing }: { drawing: Drawing }): VNode {
  const { id, title, width, svg } = drawing;
  return (
    <figure class="drawing" id={id} style={`--in:${numberText(width)}${plainStyle(drawing)}`}>
      <div class="scroll" role="region" aria-label={`Drawing: ${title}`}>
        <label>
          <input type="checkbox" aria-label={`Larger: ${title}`} />
          <Svg node={svg} />
        </label>
      </div>
      <figcaption>{title}</figcaption>
    </figure>
  );
}

function plainStyle({ plain }: Drawing): string {
  if (!plain) return '';
  const { left, top, width, height } = plain;
  const say = (value: number): string => numberText(value, 3);
  return `;--plain:${say(width)};--left:${say(left)};--top:${say(top)};--ratio:${say(width / height)}`;
}

/** Joints of trim under a heading, where its record tells them. */
export function TrimJoints({
  facts,
  name,
  id,
  heading: Heading,
}: {
  facts: MaterialFacts;
  name: string;
  id: string;
  heading: 'h2' | 'h4';
}): VNode | null {
  const drawing = trimJointsDrawer(facts, name)?.({ id, palette: screenPalette, medium: 'screen', bare: true });
  if (!drawing) return null;
  return (
    <>
      <Heading>Joints</Heading>
      <DrawingFigure drawing={drawing} />
    </>
  );
}

/** A drawn sample of an option. Its name stands beside it wherever it is shown, so the picture needs none. */
export function Swatch({ option, size = 'card' }: { option: BookOption; size?: 'card' | 'small' | 'large' }): VNode {
  const link = useLink();
  const file = size === 'small' ? 'small' : 'large';
  return (
    <span class={`swatch swatch-${size}`}>
      <img src={link(swatchPath(option, file))} alt="" {...swatchSizes[file]} />
    </span>
  );
}

/** The same, drawn into the page: where an option's sample is not among the files, as that of an older version. */
export function DrawnSwatch({ option }: { option: BookOption }): VNode {
  const svg = drawSwatch(option.swatch, {
    ...swatchSizes.large,
    seed: option.id,
    title: option.name,
    facts: sampleFacts(option),
  });
  return (
    <span class="swatch swatch-card" aria-hidden="true">
      <Svg node={svg} style="display:block;width:100%;height:auto" />
    </span>
  );
}
