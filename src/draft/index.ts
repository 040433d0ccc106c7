/** Records drafted from what others wrote. In: text. Out: a house's files as text, and a report. Absent: the disk. */
export * from './ifc/index.js';
