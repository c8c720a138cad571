import { symlinkSync } from 'node:fs';
import { request } from 'node:http';
import { connect } from 'node:net';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { contentType } from '../../src/commands/serve/content-type.ts';
import { findFile } from '../../src/commands/serve/find-file.ts';
import { openLiveReload } from '../../src/commands/serve/live-reload.ts';
import { queueRebuilds } from '../../src/commands/serve/rebuild.ts';
import { serveSite } from '../../src/commands/serve/site-server.ts';
import { fill, newFolder } from './support/folders.ts';

function site(): string {
  const folder = newFolder();
  fill(folder, {
    'secret.txt': 'secret',
    'site/index.html': '<!doctype html><body><h1>Home</h1></body>',
    'site/404.html': '<!doctype html><body>No page here</body>',
    'site/tins/index.html': '<body>Tins</body>',
    'site/tins/round 6.html': '<body>Round</body>',
    'site/style/house.css': 'body{}',
    'site/files/a.pdf': '%PDF',
    'site/.hidden': 'hidden',
  });
  symlinkSync(join(folder, 'secret.txt'), join(folder, 'site/link.txt'));
  return join(folder, 'site');
}

async function served() {
  const live = openLiveReload();
  const server = await serveSite(site(), 0, live);
  onTestFinished(server.close);
  return { live, port: server.port, at: (path: string) => `http://127.0.0.1:${server.port}${path}` };
}

/** An address sent as it is written: fetch would tidy its dots away. */
function rawStatus(port: number, path: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const socket = connect(port, '127.0.0.1', () =>
      socket.write(`GET ${path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n`),
    );
    let text = '';
    socket.on('data', (bytes) => {
      text += bytes.toString();
    });
    socket.on('end', () => resolve(text));
    socket.on('error', reject);
  });
}

function statusFor(port: number, host: string): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    request({ port, host: '127.0.0.1', headers: { host } }, (response) => {
      response.resume();
      resolve(response.statusCode);
    })
      .on('error', reject)
      .end();
  });
}

describe('findFile', () => {
  it('finds pages, folders’ index pages and names with spaces', () => {
    const root = site();
    expect(findFile(root, '/')).toBe(join(root, 'index.html'));
    expect(findFile(root, '/tins/')).toBe(join(root, 'tins/index.html'));
    expect(findFile(root, '/tins')).toBe(join(root, 'tins/index.html'));
    expect(findFile(root, '/tins/round%206.html?x#y')).toBe(join(root, 'tins/round 6.html'));
  });

  it.each([
    '/../secret.txt',
    '/tins/../../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/tins/..%5c..%5csecret.txt',
    '/.hidden',
    '/link.txt',
    '/%00',
    '/%E0%A4%A',
    '/nowhere.html',
    '/style',
  ])('finds nothing at %s', (path) => {
    expect(findFile(site(), path)).toBeNull();
  });
});

describe('the server', () => {
  it('sends files with their types, and pages with the script that loads them again', async () => {
    const { at } = await served();
    const home = await fetch(at('/'));
    expect(home.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(await home.text()).toBe(
      '<!doctype html><body><h1>Home</h1><script src="/-live.js"></script></body>',
    );
    expect((await fetch(at('/style/house.css'))).headers.get('content-type')).toBe('text/css; charset=utf-8');
    expect((await fetch(at('/files/a.pdf'))).headers.get('content-type')).toBe('application/pdf');
    expect((await fetch(at('/-live.js'))).headers.get('content-type')).toBe('text/javascript; charset=utf-8');
  });

  it('answers HEAD without a body, and nothing but reading', async () => {
    const { at } = await served();
    const head = await fetch(at('/'), { method: 'HEAD' });
    expect([head.status, await head.text()]).toEqual([200, '']);
    expect((await fetch(at('/'), { method: 'POST' })).status).toBe(405);
  });

  it('shows the site’s own page for what is not there', async () => {
    const { at } = await served();
    const missing = await fetch(at('/nowhere.html'));
    expect(missing.status).toBe(404);
    expect(await missing.text()).toContain('No page here');
  });

  it('never sends what lies outside, however the address is written', async () => {
    const { port } = await served();
    for (const path of [
      '/../secret.txt',
      '/%2e%2e/secret.txt',
      '/tins/..%2f..%2fsecret.txt',
      '//etc/passwd',
      '/link.txt',
    ]) {
      const answer = await rawStatus(port, path);
      expect(answer).toMatch(/^HTTP\/1\.1 404 /);
      expect(answer).not.toContain('secret\n');
    }
  });

  it('is for this computer only, also by name', async () => {
    const { port } = await served();
    expect(await statusFor(port, `localhost:${port}`)).toBe(200);
    expect(await statusFor(port, 'cakes.example.org')).toBe(403);
  });

  it('says when its port is taken', async () => {
    const { port } = await served();
    await expect(serveSite(site(), port, openLiveReload())).rejects.toMatchObject({ code: 'EADDRINUSE' });
  });

  it('tells open pages to load again, and shows what is wrong to those that come later too', async () => {
    const { at, live } = await served();
    const reader = (await fetch(at('/-live'))).body?.getReader();
    const next = async (): Promise<string> => new TextDecoder().decode((await reader?.read())?.value);
    expect(await next()).toBe(': open\n\n');
    live.built();
    expect(await next()).toBe('event: built\ndata: ""\n\n');
    live.problems('kitchen.yaml:1: error');
    expect(await next()).toBe('event: problems\ndata: "kitchen.yaml:1: error"\n\n');
    await reader?.cancel();
    const later = (await fetch(at('/-live'))).body?.getReader();
    let text = '';
    while (!text.includes('problems')) text += new TextDecoder().decode((await later?.read())?.value);
    await later?.cancel();
  });
});

describe('queueRebuilds', () => {
  it('makes one build of many saves, and one more for saves that come while it runs', async () => {
    let builds = 0;
    const rebuilds = queueRebuilds(async () => {
      builds += 1;
      if (builds === 1) {
        for (let save = 0; save < 5; save += 1) rebuilds.ask();
        await new Promise((resolve) => setTimeout(resolve, 40));
      }
    }, 5);
    for (let save = 0; save < 5; save += 1) rebuilds.ask();
    await rebuilds.settled();
    expect(builds).toBe(2);
  });
});

describe('contentType', () => {
  it('lets a browser save what it does not know', () => {
    expect(contentType('a.unknown')).toBe('application/octet-stream');
  });
});
