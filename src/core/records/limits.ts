/** Bytes a record may have. A long room is 10 KB; a megabyte is something else that went astray. */
export const largestRecord = 1_000_000;
