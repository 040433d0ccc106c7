import process from 'node:process';

/** Milliseconds of the processor that `work` takes. A busy machine takes no longer by this clock. */
export function processorTime(work: () => void): number {
  const start = process.cpuUsage();
  work();
  return processorTimeSince(start);
}

/** The same since a reading of `process.cpuUsage()`, for work that is waited for. */
export function processorTimeSince(start: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}
