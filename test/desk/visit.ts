import { request } from 'node:http';
import { expect } from 'vitest';

export interface Answered {
  readonly status: number;
  readonly headers: Readonly<Record<string, unknown>>;
  readonly text: string;
}

interface Asking {
  readonly cookie?: string;
  readonly body?: string;
  readonly headers?: Record<string, string>;
}

/** Somebody who opened a desk by its address, and has its key from then on. */
export interface Visitor {
  readonly ask: (method: string, path: string, more?: Asking) => Promise<Answered>;
  /** The fields of the form that a page holds for `ask`, by their names. */
  readonly formOf: (path: string, ask: string) => Promise<URLSearchParams>;
  readonly send: (form: URLSearchParams, filled?: Readonly<Record<string, string>>) => Promise<Answered>;
  readonly cookie: string;
}

export async function visit(address: string): Promise<Visitor> {
  const { pathname, search } = new URL(address);
  const opened = await askDesk(address, 'GET', pathname + search, {});
  const [cookie = ''] = String(opened.headers['set-cookie']).split(';');
  const ask = (method: string, path: string, more: Asking = {}): Promise<Answered> =>
    askDesk(address, method, path, { cookie, ...more });
  return {
    cookie,
    ask,
    formOf: async (path, id) => {
      const { text } = await ask('GET', path);
      const form = text.split('<form').find((one) => one.includes(`name="ask" value="${id}"`)) ?? '';
      expect(form, `${path} has the form ${id}`).not.toBe('');
      const fields = [...form.matchAll(/<input type="hidden" name="([^"]+)" value="([^"]*)"/gu)];
      return new URLSearchParams(fields.map(([, name = '', value = '']) => [name, value]));
    },
    send: (form, filled = {}) => {
      for (const [name, value] of Object.entries(filled)) form.set(name, value);
      return ask('POST', '/desk/do', { body: form.toString() });
    },
  };
}

/** The words of a page. */
export function plain(html: string): string {
  return html.replaceAll(/<[^>]+>/gu, '').replaceAll('&quot;', '"');
}

function askDesk(
  address: string,
  method: string,
  path: string,
  { cookie = '', body, headers = {} }: Asking,
): Promise<Answered> {
  const { host, port } = new URL(address);
  const sent: Record<string, string> = {
    host,
    ...(cookie !== '' && { cookie }),
    ...(body !== undefined && {
      origin: `http://${host}`,
      'content-type': 'application/x-www-form-urlencoded',
      'content-length': String(Buffer.byteLength(body)),
    }),
    ...headers,
  };
  return new Promise((resolve, reject) => {
    const asked = request({ host: '127.0.0.1', port, method, path, headers: sent, agent: false }, (response) => {
      let text = '';
      response.setEncoding('utf8').on('data', (part: string) => (text += part));
      response.on('end', () => resolve({ status: response.statusCode ?? 0, headers: response.headers, text }));
    });
    asked.on('error', reject);
    asked.end(body);
  });
}
