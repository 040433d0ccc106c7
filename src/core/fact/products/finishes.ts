import type { Product } from '../product.js';

/** What is seen, and what is laid out in pieces. */
export const finishes = {
  tile: {
    name: 'tile',
    knownBy: ['wet-floor'],
    facts: {
      'wet-floor': {
        kind: 'yes-no',
        tells: 'Whether its maker rates it for wet floors; by it rules know tile.',
        cautions: ['wet-room'],
      },
      substrate: { kind: 'text', tells: 'What it is set on, on a wall.', cautions: ['wet-room'], isOptional: true },
      length: {
        kind: 'length',
        tells: 'Length of a piece.',
        readers: ['take-off of grout', 'pictures of rooms'],
        isOptional: true,
      },
      width: {
        kind: 'length',
        tells: 'Width of a piece.',
        readers: ['take-off of grout', 'pictures of rooms'],
        isOptional: true,
      },
      joint: { kind: 'length', tells: 'Width of the joints.', readers: ['take-off of grout'], isOptional: true },
      bond: {
        kind: 'text',
        tells: '`stack`, `running half` or `running third`: how far each row lies aside from the one below.',
        readers: ['pictures of rooms'],
        isOptional: true,
      },
      turn: {
        kind: 'number',
        tells: 'By how much pieces are turned from lying along the surface: 0, 45 or 90; absent, 0.',
        readers: ['pictures of rooms'],
        isOptional: true,
      },
    },
  },
  /** What is walked on, of wood, tile or fiber. */
  flooring: {
    name: 'flooring',
    knownBy: ['build-up'],
    facts: {
      'build-up': {
        kind: 'length',
        tells: 'How high it builds, with its underlay or mortar.',
        cautions: ['floor-build-up'],
      },
      kind: {
        kind: 'text',
        tells: '`carpet` is soft underfoot and has no place in a bath; all else is hard.',
        cautions: ['wet-room', 'impact-sound'],
        isOptional: true,
      },
      underlayment: {
        kind: 'text',
        tells: 'What lies under it against the sound of steps; absent, nothing.',
        cautions: ['impact-sound'],
        isOptional: true,
      },
      iic: {
        kind: 'number',
        unit: 'IIC',
        tells: 'Rating of the floor as tested, with its underlayment and the ceiling under it; absent, not tested.',
        cautions: ['impact-sound'],
        isOptional: true,
      },
    },
  },
  paint: {
    name: 'paint',
    knownBy: ['sheen'],
    facts: {
      sheen: {
        kind: 'text',
        tells: 'From flat to gloss; by it rules know paint.',
        cautions: ['sheen-over-level', 'wet-room'],
      },
      coverage: {
        kind: 'number',
        unit: 'sq ft / gal',
        tells: 'What a gallon covers.',
        readers: ['take-off in gallons', 'paint schedule'],
        isOptional: true,
      },
      coats: { kind: 'number', tells: 'Coats over primer.', readers: ['paint schedule'], isOptional: true },
    },
  },
  /** Trim, doors, stair parts and timber that get paint, stain or oil: by the profile that is coated. */
  coated: {
    name: 'something that is coated',
    knownBy: [],
    facts: {
      coating: {
        kind: 'text',
        tells: 'Slug of the paint that it is coated with; of a stair, its treads.',
        readers: ['paint schedule'],
        isOptional: true,
      },
      'riser-coating': {
        kind: 'text',
        tells: 'Slug of the paint on the risers of a stair.',
        readers: ['paint schedule'],
        isOptional: true,
      },
      profile: {
        kind: 'text',
        tells: 'Profile of trim: what begins with `flat` is a board, with a `backband` two.',
        readers: ['samples'],
        isOptional: true,
      },
      face: { kind: 'length', tells: 'Width of a casing.', readers: ['paint schedule'], isOptional: true },
      height: { kind: 'length', tells: 'Height of a base.', readers: ['paint schedule'], isOptional: true },
      'stock-thickness': {
        kind: 'length',
        tells: 'Thickness of trim; absent, that of the option.',
        readers: ['paint schedule'],
        isOptional: true,
      },
      joint: {
        kind: 'text',
        tells:
          'Joint of trim at the head of an opening: `mitered` or `butt, head over legs`; what is told otherwise is not drawn.',
        cautions: ['trim-as-written'],
        readers: ['elevations', 'joints of trim'],
        isOptional: true,
      },
      'inside-corner': {
        kind: 'text',
        tells: 'Joint of a base in a corner: `coped`, `mitered`, `scribed` or `butt`.',
        cautions: ['trim-as-written'],
        readers: ['joints of trim'],
        isOptional: true,
      },
      'outside-corner': {
        kind: 'text',
        tells: 'Joint of a base around a corner: `mitered` or `butt`.',
        cautions: ['trim-as-written'],
        readers: ['joints of trim'],
        isOptional: true,
      },
      tread: { kind: 'length', tells: 'Thickness of a tread.', readers: ['paint schedule'], isOptional: true },
      nosing: {
        kind: 'length',
        tells: 'How far a tread stands before its riser.',
        readers: ['paint schedule'],
        isOptional: true,
      },
      form: { kind: 'text', tells: '`open stringer` has no risers.', readers: ['paint schedule'], isOptional: true },
    },
  },
  texture: {
    name: 'a texture',
    knownBy: ['level', 'applied'],
    facts: {
      level: {
        kind: 'number',
        tells: 'Finish level of the board below it, 0 to 5; by it and by how it is applied rules know a texture.',
        cautions: ['sheen-over-level', 'texture-between-rooms'],
      },
      applied: { kind: 'text', tells: 'By hand or sprayed.', cautions: ['texture-between-rooms'] },
    },
  },
  timber: {
    name: 'exposed timber',
    knownBy: ['structural'],
    facts: {
      structural: {
        kind: 'yes-no',
        tells: 'Whether it carries load; what carries none is hung. By it rules know timber.',
        cautions: ['hung-timber'],
      },
    },
  },
  /** Boards, sheets and trim that are laid out or counted; a category's `measure` asks for it. */
  pieces: {
    name: 'boards or sheets',
    knownBy: [],
    facts: {
      face: {
        kind: 'length',
        tells: 'Width that a board, sheet or casing covers.',
        readers: ['layouts', 'take-off in boards and sheets', 'take-off of casing'],
      },
      stock: {
        kind: 'lengths',
        tells: 'Lengths that are sold.',
        readers: ['layouts', 'take-off in sheets', 'cutting of timbers'],
      },
      'end-trim': {
        kind: 'length',
        tells: 'What comes off the two ends of every board together before it is laid; absent, nothing.',
        readers: ['layouts'],
        isOptional: true,
      },
      nominal: { kind: 'text', tells: 'Nominal size, such as 1x8.', readers: ['take-off in board feet'] },
    },
  },
} as const satisfies Readonly<Record<string, Product>>;
