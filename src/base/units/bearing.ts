/** The eight bearings of a walk, clockwise from north. */
export const compass = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const;
export type CompassBearing = (typeof compass)[number];
