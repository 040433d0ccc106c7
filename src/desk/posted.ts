import type { IncomingMessage } from 'node:http';
import { finished } from 'node:stream/promises';
import { setTimeout as wait } from 'node:timers/promises';
import { isUpload, mostBytesOf } from './guard.js';

/** A form as it was sent. */
export interface Posted {
  readonly form: URLSearchParams;
  /** The file that was sent with it. */
  readonly file?: Uint8Array;
}

/** Reads a form, no further than it may be long, whatever its head says. Undefined where it is none. */
export async function readPosted(request: IncomingMessage): Promise<Posted | undefined> {
  const type = request.headers['content-type'] ?? '';
  const body = await bodyOf(request, mostBytesOf(type));
  if (body === undefined) return undefined;
  if (!isUpload(type)) return { form: new URLSearchParams(body.toString('utf8')) };
  const parts = await new Response(new Uint8Array(body), { headers: { 'content-type': type } })
    .formData()
    .catch(() => undefined);
  return parts && partsOf(parts);
}

/** Of several files the first is taken; one that nobody chose is empty. */
async function partsOf(parts: FormData): Promise<Posted> {
  const form = new URLSearchParams();
  const files: Blob[] = [];
  parts.forEach((value, name) => {
    if (typeof value === 'string') form.append(name, value);
    else if (value.size > 0) files.push(value);
  });
  const [file] = files;
  return { form, ...(file && { file: new Uint8Array(await file.arrayBuffer()) }) };
}

async function bodyOf(request: IncomingMessage, most: number): Promise<Buffer | undefined> {
  const parts: Buffer[] = [];
  let length = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    length += part.length;
    if (length > most) return undefined;
    parts.push(part);
  }
  return Buffer.concat(parts);
}

/** So long, in milliseconds, is waited for the end of what is not taken. */
const longestSwallow = 3000;

/** Reads what is not taken to its end, and keeps nothing of it. */
export async function swallow(request: IncomingMessage): Promise<void> {
  request.resume();
  await Promise.race([finished(request).catch(() => undefined), wait(longestSwallow, undefined, { ref: false })]);
}
