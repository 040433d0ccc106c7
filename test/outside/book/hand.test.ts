import { expect } from 'vitest';
import { handOf } from '../../../src/core/book/index.js';
import { published } from '../published.js';

const source = 'DHI, hand of a door: seen from the side where one pushes, hinges on the left make a left hand';

published({ what: 'a door pushed open with hinges on the left is left hand', source, mark: 'M' }, () => {
  expect(handOf('hall', { operation: 'swing', hinge: 'left', swing: 'study' })).toBe('left');
  expect(handOf('hall', { operation: 'swing', hinge: 'right', swing: 'study' })).toBe('right');
});

// Back against the hinge jamb, a right-hand door swings to one's right: the same by another way. Hinges left as seen from
// the hall, leaf into the hall: in the opening, back to the hinges, the hall is on the right.
published({ what: 'a door pulled open with hinges on the left is right hand', source, mark: 'M' }, () => {
  expect(handOf('hall', { operation: 'swing', hinge: 'left', swing: 'hall' })).toBe('right');
  expect(handOf('hall', { operation: 'pocket', hinge: 'left', swing: 'hall' })).toBeUndefined();
});
