/** The digest of the sources that a built program was made from, written into it by scripts/build.ts; a program run from its sources has none. */
declare const builtFrom: string | undefined;
