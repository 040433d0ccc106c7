import { readFile, stat } from 'node:fs/promises';
import { draftModel, modelTooLarge } from '../draft/index.js';
import { UsageError } from './usage-error.js';

/** The draft of a model on disk, which may be too large to be read at all. In the locale in force. */
export async function readModel(
  file: string,
  taken?: Parameters<typeof draftModel>[1],
): Promise<ReturnType<typeof draftModel>> {
  const facts = await stat(file).catch(() => undefined);
  if (!facts?.isFile()) throw new UsageError(`there is no file ${file}`);
  const tooLarge = modelTooLarge(file, facts.size);
  if (tooLarge) return { problems: [tooLarge] };
  return draftModel({ file, text: new TextDecoder().decode(await readFile(file)) }, taken);
}
