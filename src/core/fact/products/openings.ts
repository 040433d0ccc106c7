import type { Product } from '../product.js';

/** Doors with their hardware, and guards. */
export const openings = {
  door: {
    name: 'an interior door',
    knownBy: ['leaf', 'rough-width', 'rough-height'],
    facts: {
      height: {
        kind: 'length',
        tells: 'Height of the leaf, held against the opening as drawn.',
        cautions: ['rough-opening'],
        readers: ['door schedule'],
      },
      widths: {
        kind: 'lengths',
        tells: 'Widths that are made: the opening has one of them.',
        cautions: ['rough-opening'],
        readers: ['door schedule'],
      },
      'rough-width': {
        kind: 'length',
        tells: 'How much wider than the leaf it is framed.',
        cautions: ['rough-opening'],
        readers: ['door schedule'],
      },
      'rough-height': {
        kind: 'length',
        tells: 'How much higher than the leaf it is framed; by it rules know a door.',
        cautions: ['rough-opening', 'door-under-slope'],
        readers: ['door schedule'],
      },
      jamb: {
        kind: 'length',
        tells: 'Depth of the jamb, held against the finished wall.',
        cautions: ['jamb-depth'],
        readers: ['door schedule'],
      },
      leaf: {
        kind: 'length',
        tells: 'Thickness of the leaf; by it the schedule knows a door.',
        readers: ['door schedule'],
      },
      undercut: {
        kind: 'length',
        tells: 'What is cut off the foot of the leaf over the finished floor.',
        readers: ['door schedule'],
        isOptional: true,
      },
      core: { kind: 'text', tells: 'What the leaf is filled with.', readers: ['door schedule'], isOptional: true },
      face: { kind: 'text', tells: 'What the leaf is faced with.', readers: ['door schedule'], isOptional: true },
      glass: {
        kind: 'text',
        tells: 'Glass in the leaf, whether it is tempered or laminated.',
        cautions: ['glazing-at-door'],
        readers: ['door schedule'],
        isOptional: true,
      },
      panels: { kind: 'text', tells: 'Panels of the leaf.', readers: ['door schedule'], isOptional: true },
    },
  },
  'door-hardware': {
    name: 'door hardware',
    knownBy: ['backset'],
    facts: {
      backset: {
        kind: 'length',
        tells: 'From the edge of the leaf to the middle of the bore; by it the schedule knows hardware.',
        readers: ['hardware sets'],
      },
      function: {
        kind: 'text',
        tells: 'Functions that are made, parted by commas; held against the door.',
        readers: ['hardware sets', 'door schedule'],
        isOptional: true,
      },
      holds: { kind: 'text', tells: 'What is in one set.', readers: ['hardware sets'], isOptional: true },
      finish: {
        kind: 'text',
        tells: 'Finish of the metal.',
        readers: ['hardware sets', 'door schedule'],
        isOptional: true,
      },
    },
  },
  railing: {
    name: 'a railing',
    measuredBy: 'railing',
    knownBy: ['clear-opening', 'post-spacing'],
    facts: {
      height: {
        kind: 'length',
        tells: 'Height of the guard above the finished floor, or above the nosings of a stair.',
        cautions: ['guard-at-drop'],
        readers: ['railing schedule', 'section and elevation of an open edge', 'take-off of infill'],
      },
      'clear-opening': {
        kind: 'length',
        tells: 'Clear between its parts: what a ball must not pass.',
        cautions: ['guard-opening'],
        readers: ['railing schedule', 'take-off of infill'],
      },
      'post-spacing': {
        kind: 'length',
        tells: 'Posts stand no further apart than this.',
        readers: ['take-off of posts', 'railing schedule', 'plan and elevation of an open edge'],
        isOptional: true,
      },
      'post-width': {
        kind: 'length',
        tells: 'Width of a post; absent, a bay is as wide as from post to post.',
        readers: ['take-off of infill'],
        isOptional: true,
      },
      'baluster-width': {
        kind: 'length',
        tells: 'Width of a baluster; what has one is filled with balusters, no further apart than the clear opening.',
        readers: ['take-off of infill'],
        isOptional: true,
      },
      'cable-spacing': {
        kind: 'length',
        tells: 'From cable to cable, and from the floor and the rail to the next; what has one is filled with cables.',
        readers: ['take-off of infill'],
        isOptional: true,
      },
      'panel-gap': {
        kind: 'length',
        tells: 'Between a panel and the post beside it; what has one is filled with a panel in each bay.',
        readers: ['take-off of infill'],
        isOptional: true,
      },
      'bracket-spacing': {
        kind: 'length',
        tells: `Brackets of a handrail on a wall are no further apart than this; absent, 4'-0".`,
        readers: ['take-off of brackets'],
        isOptional: true,
      },
      mount: { kind: 'text', tells: 'What the posts are fixed to.', readers: ['railing schedule'], isOptional: true },
    },
  },
} as const satisfies Readonly<Record<string, Product>>;
