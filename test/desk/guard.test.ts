import { describe, expect, it } from 'vitest';
import { cookieOf, isKey, refusal, type Asked } from '../../src/desk/guard.js';

const own = { host: '127.0.0.1:4711', key: 'k'.repeat(32) };

const form = {
  host: own.host,
  origin: `http://${own.host}`,
  'sec-fetch-site': 'same-origin',
  'content-length': '12',
  'content-type': 'application/x-www-form-urlencoded',
};
const post: Asked = { method: 'POST', target: '/desk/do', headers: form, from: '127.0.0.1' };
const get: Asked = { method: 'GET', target: '/rooms/study.html?x=1', headers: { host: own.host }, from: '127.0.0.1' };

const without = (name: keyof typeof form): Asked => ({ ...post, headers: { ...form, [name]: undefined } });
const withHead = (name: string, value: string): Asked => ({ ...post, headers: { ...form, [name]: value } });

describe('what the desk answers', () => {
  it.each<[string, Asked]>([
    ['a page', get],
    ['a page from ::1 as node names it', { ...get, from: '::ffff:127.0.0.1' }],
    ['a form of its own', post],
    ['a form of a browser that does not tell the site', without('sec-fetch-site')],
    ['a form of a browser that tells the site alone', without('origin')],
  ])('%s', (_, asked) => expect(refusal(asked, own)).toBeUndefined());
});

describe('what the desk refuses', () => {
  it.each<[string, number, Asked]>([
    ['another machine', 403, { ...get, from: '192.168.1.20' }],
    ['an address that only begins like this machine', 403, { ...get, from: '127.0.0.1.evil' }],
    ['no address', 403, { ...get, from: '' }],
    ['another name for this machine', 421, { ...get, headers: { host: 'localhost:4711' } }],
    ['a name that was made to mean it', 421, { ...get, headers: { host: 'evil.example:4711' } }],
    ['another port', 421, { ...get, headers: { host: '127.0.0.1:80' } }],
    ['no name', 421, { ...get, headers: {} }],
    ['a method that it does not know', 405, { ...get, method: 'PUT' }],
    ['a question whether it may', 405, { ...post, method: 'OPTIONS' }],
    ['a way out of the folder', 400, { ...get, target: '/../etc/passwd' }],
    ['a coded way out', 400, { ...get, target: '/%2e%2e/etc/passwd' }],
    ['a backslash', 400, { ...get, target: '/rooms\\..\\x' }],
    ['a whole address', 400, { ...get, target: 'http://evil.example/' }],
    ['two strokes', 400, { ...get, target: '//evil.example/x' }],
    ['a hidden file', 400, { ...get, target: '/.git/config' }],
    ['an endless path', 400, { ...get, target: `/${'a'.repeat(3000)}` }],
    ['a form of another page', 403, withHead('origin', 'http://evil.example')],
    ['a form of nobody', 403, withHead('origin', 'null')],
    ['a form of the same machine at another port', 403, withHead('origin', 'http://127.0.0.1:80')],
    ['a form of the same name without encryption mixed up', 403, withHead('origin', 'https://127.0.0.1:4711')],
    ['a form that comes from another site', 403, withHead('sec-fetch-site', 'cross-site')],
    ['a form that comes from another port of this machine', 403, withHead('sec-fetch-site', 'same-site')],
    ['a form that was typed in', 403, withHead('sec-fetch-site', 'none')],
    [
      'a form that says nothing of where it comes from',
      403,
      { ...post, headers: { ...form, origin: undefined, 'sec-fetch-site': undefined } },
    ],
    ['a form without length', 411, without('content-length')],
    ['a form with an odd length', 411, withHead('content-length', '-1')],
    ['a form too large', 413, withHead('content-length', '4000001')],
    ['a form of another kind', 415, withHead('content-type', 'application/json')],
    ['a text that any page may send', 415, withHead('content-type', 'text/plain')],
    ['a kind that only begins so', 415, withHead('content-type', 'application/x-www-form-urlencodedx')],
  ])('%s', (_, status, asked) => {
    const refused = refusal(asked, own);
    expect(refused?.status).toBe(status);
    expect(refused?.why).toMatch(/\w/u);
  });
});

describe('the key', () => {
  it('is its own, whole', () => {
    expect(isKey(own.key, own)).toBe(true);
    for (const wrong of [undefined, '', own.key.slice(1), `${own.key}k`, own.key.replace('k', 'x'), 'é'.repeat(16)])
      expect(isKey(wrong, own)).toBe(false);
  });

  it('is read from the cookie of its port alone', () => {
    expect(cookieOf(`a=1; desk-4711=${own.key}; b=2`, own)).toBe(own.key);
    expect(cookieOf(`desk-4712=${own.key}`, own)).toBeUndefined();
    expect(cookieOf(`xdesk-4711=${own.key}`, own)).toBeUndefined();
    expect(cookieOf(undefined, own)).toBeUndefined();
  });
});
