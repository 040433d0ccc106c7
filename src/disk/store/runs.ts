import process from 'node:process';

/** Does a program of this machine run under this number? */
export function runs(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    // It runs, and is somebody else's.
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
