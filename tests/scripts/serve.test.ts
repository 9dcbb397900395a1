import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Served, serve } from '../../scripts/serve.ts';

let top: string;
let served: Served;

beforeAll(async () => {
  top = await mkdtemp(join(tmpdir(), 'served-'));
  await mkdir(join(top, 'page', 'inner'), { recursive: true });
  await writeFile(join(top, 'secret.txt'), 'secret');
  await writeFile(join(top, 'page', 'index.html'), '<title>top</title>');
  await writeFile(join(top, 'page', 'inner', 'index.html'), '<title>inner</title>');
  await writeFile(join(top, 'page', 'a b.js'), 'export {}');
  await writeFile(join(top, 'page', 'x.wasm'), '');
  await writeFile(join(top, 'page', 'x.woff2'), '');
  await writeFile(join(top, 'page', 'x.exe'), '');
  await symlink(join(top, 'secret.txt'), join(top, 'page', 'link.txt'));
  served = await serve(join(top, 'page'), { from: 4400 });
});

afterAll(async () => {
  await served.close();
  await rm(top, { recursive: true });
});

interface Answer {
  readonly status: number | undefined;
  readonly headers: Readonly<Record<string, unknown>>;
  readonly body: string;
}

/** Sends the path as it stands, where `fetch` would tidy it first. */
function ask(path: string, method = 'GET'): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const asking = request({ host: '127.0.0.1', port: served.port, path, method }, (response) => {
      let body = '';
      response.on('data', (part: Buffer) => {
        body += part.toString();
      });
      response.on('end', () => resolve({ status: response.statusCode, headers: response.headers, body }));
    });
    asking.on('error', reject);
    asking.end();
  });
}

describe('a served folder', () => {
  test.each([
    ['/', 'text/html; charset=utf-8', '<title>top</title>'],
    ['/?a=../b', 'text/html; charset=utf-8', '<title>top</title>'],
    ['/inner/', 'text/html; charset=utf-8', '<title>inner</title>'],
    ['/a%20b.js', 'text/javascript; charset=utf-8', 'export {}'],
    ['/x.wasm', 'application/wasm', ''],
    ['/x.woff2', 'font/woff2', ''],
    ['/x.exe', 'application/octet-stream', ''],
  ])('answers %s as %s', async (path, type, body) => {
    const answer = await ask(path);
    expect([answer.status, answer.headers['content-type'], answer.body]).toEqual([200, type, body]);
  });

  test.each([
    '/missing',
    '/inner',
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/..%5csecret.txt',
    '/inner/../../secret.txt',
    '//secret.txt',
    '/link.txt',
    '/%00',
    '/%zz',
  ])('has nothing at %s', async (path) => {
    const answer = await ask(path);
    expect([answer.status, answer.body]).toEqual([404, 'There is no such file here.\n']);
  });

  test('only gives, and never takes', async () => {
    expect((await ask('/', 'POST')).status).toBe(405);
    expect(await ask('/', 'HEAD')).toMatchObject({ status: 200, body: '' });
  });

  test.each(['/', '/missing'])('sends its policy with %s', async (path) => {
    const { headers } = await ask(path);
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['content-security-policy']).toContain("default-src 'none'; script-src 'self';");
    expect(headers['content-security-policy']).not.toMatch(/script-src[^;]*unsafe|\*/);
  });
});

describe('a port that is taken', () => {
  test('is passed over when any port will do', async () => {
    const second = await serve(join(top, 'page'), { from: served.port });
    expect(second.port).toBeGreaterThan(served.port);
    await second.close();
  });

  test('is said so when it was asked for by number', async () => {
    await expect(serve(join(top, 'page'), { port: served.port })).rejects.toThrow(
      `Port ${served.port} is taken by another program.`,
    );
  });
});
