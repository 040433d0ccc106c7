import {
  carries,
  factOf,
  patternFacts,
  trimJoints,
  type PatternFacts,
  type Telling,
  type TrimJoints,
} from '../fact/index.js';
import type { Category, Run, Swatch } from '../model/index.js';
import {
  buildRail,
  findPlaces,
  railOf,
  type LaidSurface,
  type LayoutSummary,
  type RailPiece,
} from '../takeoff/index.js';
import type { Length } from '../../base/units/index.js';
import type { BookOption, BookRoom, BookSelection } from './book.js';
import type { LookUp } from './look-up.js';

/** What part a finish plays in a picture of its room. */
export type SeenRole = 'surface' | 'coat' | 'texture' | 'base' | 'trim' | 'door' | 'hardware' | 'railing' | 'unit';

/** A choice that can be seen in its room, with all that a picture of it needs to know. */
export interface SeenFinish {
  readonly selection: string;
  readonly category: string;
  readonly trade: string;
  readonly role: SeenRole;
  /** Ids of the places that it covers. */
  readonly places: readonly string[];
  /** `White oak, engineered, 7 inch`; `Floor` while nothing is chosen. */
  readonly name: string;
  /** Absent while it is to be decided. */
  readonly option?: string;
  readonly swatch?: Swatch;
  /** Where courses and joints lie, of what is laid out in pieces. */
  readonly laid?: {
    readonly lay: LayoutSummary['lay'];
    readonly face: Length;
    readonly surfaces: readonly LaidSurface[];
  };
  /** Width of a casing, height of a base, of a guard. */
  readonly face?: Length;
  /** How a casing's head meets its legs. */
  readonly joint?: TrimJoints['head'];
  readonly rails?: readonly SeenRail[];
  readonly facts: SeenFacts;
  /** The pattern that its pieces make. */
  readonly pattern: PatternFacts;
}

/** A run of railing as it would be built. */
export interface SeenRail {
  readonly place: string;
  readonly run: Run;
  readonly pieces: readonly RailPiece[];
}

/** Facts of the option that change how it looks. */
export interface SeenFacts {
  readonly postWidth?: Length;
  readonly cableSpacing?: Length;
  readonly balusterWidth?: Length;
  readonly panelGap?: Length;
}

/** Options to be drawn in place of those that stand, by selection; undefined for a deliberate none. */
export type Instead = ReadonlyMap<string, string | undefined>;

/** What is seen in a room, in working order: the last at a place lies on top. */
export function seenIn(room: BookRoom, look: LookUp, instead: Instead = new Map()): readonly SeenFinish[] {
  return look.selectionsOf(room).flatMap((selection) => {
    const category = look.category(selection.category);
    const role = category && roleOf(category, selection.places);
    const { id, state } = selection;
    const isNone = instead.has(id) ? instead.get(id) === undefined : state === 'none';
    return role === undefined || isNone ? [] : [seen(selection, role, room, look, instead.get(id))];
  });
}

function seen(
  selection: BookSelection,
  role: SeenRole,
  room: BookRoom,
  look: LookUp,
  instead: string | undefined,
): SeenFinish {
  const { category, trade, places, id } = selection;
  const slug = instead ?? selection.chosen;
  const option = look.option(category, slug);
  // Pieces are laid out, and posts stood, for what is counted only.
  const isCounted = slug !== undefined && slug === selection.counted;
  const laid = isCounted ? selection.takeoff.find(({ layout }) => layout !== undefined)?.layout : undefined;
  const rails = role === 'railing' && option ? railsOf(selection, option, room) : [];
  return {
    selection: id,
    category,
    trade,
    role,
    places: placesOf(
      selection,
      role,
      places.map((place) => place.id),
    ),
    name: option?.name ?? look.categoryName(category),
    ...(option && { option: option.slug, ...(option.swatch && { swatch: option.swatch }) }),
    ...(laid && { laid: { lay: laid.lay, face: laid.face, surfaces: laid.surfaces } }),
    ...(rails.length > 0 && { rails }),
    ...shownFacts(role, option),
  };
}

/** What of an option's record, beside its swatch, changes how it looks. */
export function shownFacts(
  role: SeenRole,
  option: Telling | undefined,
): Pick<SeenFinish, 'face' | 'joint' | 'facts' | 'pattern'> {
  const face = faceOf(role, option);
  const joint = role === 'trim' ? trimJoints(option).head : undefined;
  return {
    ...(face !== undefined && { face }),
    ...(joint && { joint }),
    facts: factsOf(option),
    pattern: patternFacts(option),
  };
}

/** Base runs along the walls that its take-off lists; all else is where its record says. */
function placesOf({ takeoff }: BookSelection, role: SeenRole, places: readonly string[]): readonly string[] {
  if (role !== 'base') return places;
  return takeoff.flatMap((one) => one.places.filter(({ net }) => net > 0).map(({ place }) => place));
}

/** The posts and bays of each run, as if it stood alone: where two runs end together each has its post there. */
function railsOf({ places }: BookSelection, option: BookOption, { measure }: BookRoom): readonly SeenRail[] {
  return places.flatMap(({ id }) =>
    (findPlaces(id, measure) ?? []).flatMap((place) => {
      const run = railOf(place);
      return run ? [{ place: id, run, pieces: buildRail(run, option, []).pieces }] : [];
    }),
  );
}

/** What hides behind others, such as boards and batts, is not seen. */
export function roleOf(
  found: Pick<Category, 'attributes' | 'layer' | 'measure'>,
  places: readonly { readonly id: string }[],
): SeenRole | undefined {
  if (found.layer === 'insulation' || found.layer === 'backing') return undefined;
  if (carries(found, 'paint', 'sheen')) return 'coat';
  if (carries(found, 'texture', 'applied')) return 'texture';
  if (found.layer === 'substrate') return undefined;
  if (found.measure.by === 'railing') return 'railing';
  if (carries(found, 'door', 'leaf')) return 'door';
  if (carries(found, 'door-hardware', 'backset')) return 'hardware';
  if (found.layer === 'edge') return places.some(({ id }) => id === 'base') ? 'base' : 'trim';
  return found.layer === 'fixture' ? 'unit' : 'surface';
}

function faceOf(role: SeenRole, option: Telling | undefined): Length | undefined {
  if (role === 'railing') return factOf(option, 'railing', 'height');
  if (role === 'base') return factOf(option, 'coated', 'height');
  return role === 'trim' ? factOf(option, 'coated', 'face') : undefined;
}

function factsOf(option: Telling | undefined): SeenFacts {
  const [postWidth, cableSpacing] = [
    factOf(option, 'railing', 'post-width'),
    factOf(option, 'railing', 'cable-spacing'),
  ];
  const balusterWidth = factOf(option, 'railing', 'baluster-width');
  const panelGap = factOf(option, 'railing', 'panel-gap');
  return {
    ...(postWidth !== undefined && { postWidth }),
    ...(cableSpacing !== undefined && { cableSpacing }),
    ...(balusterWidth !== undefined && { balusterWidth }),
    ...(panelGap !== undefined && { panelGap }),
  };
}
