/** SVG as plain data: nodes in, text out. No drawing knows of a browser or a file. */
export * from './code.js';
export * from './node.js';
export * from './element.js';
export * from './path.js';
export * from './number.js';
export * from './short-path.js';
export * from './text.js';
