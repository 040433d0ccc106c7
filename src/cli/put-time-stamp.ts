import { printable } from '../base/problem/index.js';
import { writeAtomically } from '../disk/store/index.js';
import { printInstant, stampSignature } from '../signoff/sign/index.js';
import { checkFree } from './check-free.js';
import type { Console } from './console.js';
import { readNamed } from './read-named.js';

/** `bookmatch sign FILE.pdf --timestamp ANSWER.tsr`: what an authority said of the newest signature's time, put into a copy of the PDF. Returns
 *  the exit code. */
export async function putTimeStamp(
  file: string,
  { answer, out = file.replace(/(?:\.pdf)?$/iu, '-stamped.pdf') }: { readonly answer: string; readonly out?: string },
  console: Console,
): Promise<number> {
  checkFree(out);
  const pdf = await readNamed(file, 'the PDF');
  const stamped = await stampSignature(pdf, await readNamed(answer, "the authority's answer"));
  if (!stamped.ok) {
    console.error(`${printable(`${answer}: ${stamped.message}`)}. Nothing was written.\n`);
    return 1;
  }
  await writeAtomically(out, stamped.pdf);
  const { field, timeStamp } = stamped.signature;
  const when = timeStamp?.at ? printInstant(timeStamp.at) : 'no time';
  console.tell(
    printable(`${out}  ${field} with the time-stamp ${when} by ${timeStamp?.authority?.subject ?? ''}`) + '\n',
  );
  return 0;
}
