export * from './house.js';
export * from './room.js';
export * from './product.js';
export * from './records.js';
export * from './alternative.js';
export * from './agreement.js';
export * from './measure.js';
export * from './measure-parts.js';
