/** Flat geometry in feet: rings and patches in, clipped and measured patches out. No records, no rounding. */
export * from './xy.js';
export * from './arc.js';
export * from './scale.js';
export * from './ring.js';
export * from './arc.js';
export * from './stretch.js';
export * from './patch.js';
export * from './half-plane.js';
export * from './combine.js';
export * from './weld.js';
export * from './plane.js';
export * from './envelope.js';
export * from './profile.js';
export * from './heading.js';
export * from './unite.js';
export * from './space.js';
