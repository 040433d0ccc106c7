import { adheredFacing } from './adhered-facing.js';
import { adheredFacingOutside } from './adhered-facing-outside.js';
import { combustibleNearFire } from './combustible-near-fire.js';
import { doorUnderSlope } from './door-under-slope.js';
import { escapeOpening } from './escape-opening.js';
import { floorBuildUp } from './floor-build-up.js';
import { floorStep } from './floor-step.js';
import { fullBedSupport } from './full-bed-support.js';
import { guardAtDrop } from './guard-at-drop.js';
import { guardOpening } from './guard-opening.js';
import { headroom } from './headroom.js';
import { glazingAtDoor } from './glazing-at-door.js';
import { glazingAtStair } from './glazing-at-stair.js';
import { glazingAtWater } from './glazing-at-water.js';
import { handrail } from './handrail.js';
import { hearthExtension } from './hearth-extension.js';
import { heatForRoom } from './heat-for-room.js';
import { hungTimber } from './hung-timber.js';
import { impactSound } from './impact-sound.js';
import { insulationByZone } from './insulation-by-zone.js';
import { jambDepth } from './jamb-depth.js';
import { jointAsWritten } from './joint-as-written.js';
import { lowWindow } from './low-window.js';
import { mustMatch } from './must-match.js';
import { onlyWayUp } from './only-way-up.js';
import { overhang } from './overhang.js';
import { pocketFits } from './pocket-fits.js';
import { privacyAtDoor } from './privacy-at-door.js';
import { railInAir } from './rail-in-air.js';
import { roughOpening } from './rough-opening.js';
import type { Rule } from './rule.js';
import { sheenOverLevel } from './sheen-over-level.js';
import { soundAtBath } from './sound-at-bath.js';
import { stairHeadroom } from './stair-headroom.js';
import { swingMeets } from './swing-meets.js';
import { textureBetweenRooms } from './texture-between-rooms.js';
import { thermalBarrier } from './thermal-barrier.js';
import { timberOutside } from './timber-outside.js';
import { trimAsWritten } from './trim-as-written.js';
import { wayUp } from './way-up.js';
import { wetRoom } from './wet-room.js';
import { windowInWall } from './window-in-wall.js';

/** Every rule, what can hurt first. A new rule is one file and one line here. */
export const rules: readonly Rule[] = [
  guardAtDrop,
  guardOpening,
  handrail,
  onlyWayUp,
  wayUp,
  escapeOpening,
  lowWindow,
  glazingAtDoor,
  glazingAtWater,
  glazingAtStair,
  headroom,
  stairHeadroom,
  floorStep,
  hearthExtension,
  combustibleNearFire,
  heatForRoom,
  thermalBarrier,
  fullBedSupport,
  adheredFacing,
  adheredFacingOutside,
  hungTimber,
  railInAir,
  timberOutside,
  jointAsWritten,
  trimAsWritten,
  doorUnderSlope,
  swingMeets,
  pocketFits,
  roughOpening,
  windowInWall,
  overhang,
  insulationByZone,
  wetRoom,
  soundAtBath,
  impactSound,
  privacyAtDoor,
  floorBuildUp,
  jambDepth,
  mustMatch,
  textureBetweenRooms,
  sheenOverLevel,
];
