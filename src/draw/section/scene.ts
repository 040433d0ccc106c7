import { areaOf, common, unite, without, type Patch } from '../../base/geometry/index.js';
import { solidSpace } from '../../core/feature/index.js';
import type { RoomMeasure, RoomSection } from '../../core/model/index.js';
import type { SeenFinish } from '../../core/book/index.js';
import { sidesOf } from '../cutaway/outline.js';
import { facesOf, seenBeyond, type Seen } from './beyond.js';
import { bodyCut, type BodyCut } from './body-cut.js';
import { clearOf, cutOf, type Cut } from './cut.js';
import { shellCut, type ShellCut } from './shell-cut.js';

/** What a section shows, in the plane's axes. */
export interface SectionScene {
  readonly cut: Cut;
  readonly shell: ShellCut;
  /** Floor, walls and ceiling as they are cut, with all that is let into them. */
  readonly poche: readonly Patch[];
  /** What of features is cut, as far as the room reaches. */
  readonly bodies: readonly (BodyCut & { readonly shown: readonly Patch[] })[];
  /** Back to front. */
  readonly seen: readonly Seen[];
}

export function sectionScene(
  measure: RoomMeasure,
  section: Pick<RoomSection, 'at' | 'looks'>,
  seen: readonly SeenFinish[] = [],
): SectionScene {
  const sides = sidesOf(measure);
  const faces = facesOf(measure, sides, seen);
  const cut = clearOf(cutOf(measure, section), faces);
  const shell = shellCut(measure, sides, cut);
  const space = solidSpace(measure);
  const bodies = measure.features.flatMap((feature) => bodyCut(feature, space, cut) ?? []);
  const hollows = bodies.flatMap(({ hollow }) => hollow);
  const open = unite([...shell.open, ...hollows]);
  const solid = [...shell.solid, ...without(unite(bodies.flatMap(({ lining }) => lining)), open)];
  return {
    cut,
    shell,
    poche: without(unite(solid), hollows),
    bodies: bodies
      .map((body) => ({ ...body, shown: body.solid.flatMap((patch) => common([patch], open)) }))
      .filter(isAny),
    seen: seenBeyond(cut, faces, open),
  };
}

function isAny({ shown, hollow }: { readonly shown: readonly Patch[]; readonly hollow: readonly Patch[] }): boolean {
  return areaOf(shown) > 1e-5 || hollow.length > 0;
}
