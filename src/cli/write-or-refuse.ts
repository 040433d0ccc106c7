import { OutputRefused } from '../disk/store/index.js';
import { UsageError } from './usage-error.js';

/** A folder that holds other people's files is wrong usage. `outcome`: what became of the command, behind the words. */
export async function writeOrRefuse<T>(write: () => Promise<T>, outcome = ''): Promise<T> {
  try {
    return await write();
  } catch (error) {
    if (error instanceof OutputRefused) throw new UsageError(`${error.message}${outcome}`);
    throw error;
  }
}
