import { stat } from 'node:fs/promises';
import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { study, visitedDesk } from './small-house.js';

const at = visitedDesk();
const { ask, formOf, send, textOf } = at;

describe('a desk and strangers', () => {
  it('answers nobody who has not its key, and writes for nobody whose form is not its own', async () => {
    expect((await ask('GET', '/index.html', { cookie: '' })).status).toBe(403);
    expect((await ask('GET', '/?key=wrong', { cookie: '' })).status).toBe(403);
    const form = await formOf(`/desk/record.html?path=${study}`, 'save');
    const before = await textOf();
    form.set('secret', 'x'.repeat(32));
    expect((await send(form, { text: 'nothing' })).status).toBe(403);
    const other = await formOf(`/desk/record.html?path=${study}`, 'save');
    other.set('text', 'nothing');
    const stranger = { origin: 'http://evil.example' };
    expect((await ask('POST', '/desk/do', { body: other.toString(), headers: stranger })).status).toBe(403);
    expect((await ask('POST', '/desk/do', { body: other.toString(), cookie: '' })).status).toBe(403);
    expect(await textOf()).toBe(before);
  });

  it('is at one address of this machine, and at no other', async () => {
    const { port } = new URL(at.desk.address);
    const reached = (host: string): Promise<boolean> =>
      new Promise((resolve) => {
        const socket = connect({ host, port: Number(port), timeout: 2000 });
        const end = (isReached: boolean) => (): void => {
          socket.destroy();
          resolve(isReached);
        };
        socket.on('connect', end(true)).on('error', end(false)).on('timeout', end(false));
      });
    const others = Object.values(networkInterfaces()).flatMap((all = []) =>
      all.flatMap(({ internal, address, family }) => (internal || family !== 'IPv4' ? [] : [address])),
    );
    expect(await reached('127.0.0.1')).toBe(true);
    for (const host of ['127.0.0.2', '::1', ...others]) expect(await reached(host), host).toBe(false);
  });

  it('takes forms at one path alone', async () => {
    const before = await textOf();
    const form = await formOf(`/desk/record.html?path=${study}`, 'save');
    form.set('text', 'nothing');
    const sent = { body: form.toString() };
    for (const path of ['/', '/index.html', '/desk/index.html'])
      expect((await ask('POST', path, sent)).status, path).toBe(404);
    expect(await textOf()).toBe(before);
  });

  it('writes by no GET, whatever is asked', async () => {
    const before = await stat(join(at.dir, study));
    const form = await formOf(`/desk/record.html?path=${study}`, 'save');
    form.set('text', 'nothing');
    for (const path of [`/desk/do?${form.toString()}`, '/desk/do', `/desk/record.html?${form.toString()}`])
      await ask('GET', path);
    expect((await stat(join(at.dir, study))).mtimeMs).toBe(before.mtimeMs);
  });

  it('answers no request that says twice for whom it is', async () => {
    const { host, port } = new URL(at.desk.address);
    const asked = (hosts: readonly string[]): Promise<string> =>
      new Promise((resolve, reject) => {
        const lines = [
          'GET /desk/add.html HTTP/1.1',
          ...hosts.map((one) => `Host: ${one}`),
          `Cookie: ${at.own.cookie}`,
        ];
        const socket = connect(Number(port), '127.0.0.1', () => socket.write(`${lines.join('\r\n')}\r\n\r\n`));
        socket.on('error', reject);
        socket.once('data', (data: Buffer) => {
          resolve(data.toString('utf8').split(' ')[1] ?? '');
          socket.destroy();
        });
      });
    expect(await asked([host])).toBe('200');
    expect(await asked([host, 'evil.example'])).toBe('421');
    expect(await asked(['evil.example', host])).toBe('421');
    expect(await asked([])).toBe('400');
  });
});
