/** The program's own files, and paths. In: a path from its folder. Out: where that lies, run from its sources or built; the digest of what
 *  computes; a path as all machines write it. Absent: houses. */
export { programDigest } from './digest.js';
export { pathBelow } from './path-below.js';
export { packagePath, programPath } from './folder.js';
export { ownProcess, type OwnProcess } from './own-process.js';
export { builtPageScript, pageScript } from './page-script.js';
export { programVersion } from './version.js';
