/** A small server for one folder, on this computer only: what it sends is what any static host would send. */
import { readFileSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { contentType } from './content-type.ts';
import { findFile } from './find-file.ts';
import { LIVE_PATH, LIVE_SCRIPT, type LiveReload, SCRIPT_PATH, withLiveScript } from './live-reload.ts';

export interface SiteServer {
  port: number;
  close(): Promise<void>;
}

/** Starts serving `siteDir`; 0 takes any free port. Rejects when the port is taken. */
export async function serveSite(siteDir: string, port: number, live: LiveReload): Promise<SiteServer> {
  const server = createServer((request, response) => answer(siteDir, live, request, response));
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', resolve);
  });
  const { port: taken } = server.address() as AddressInfo;
  return { port: taken, close: () => closed(server, live) };
}

function closed(server: Server, live: LiveReload): Promise<void> {
  live.close();
  server.closeAllConnections();
  return new Promise((resolve) => server.close(() => resolve()));
}

interface Reply {
  status: number;
  type: string;
  body: string | Buffer;
}

function answer(siteDir: string, live: LiveReload, request: IncomingMessage, response: ServerResponse): void {
  if (request.url === LIVE_PATH && isLocal(request.headers.host)) live.listen(response);
  else send(response, replyTo(siteDir, request));
}

function replyTo(siteDir: string, request: IncomingMessage): Reply {
  const path = request.url ?? '/';
  if (!isLocal(request.headers.host)) return plain(403, 'Only for this computer.');
  if (request.method !== 'GET' && request.method !== 'HEAD') return plain(405, 'Only for reading.');
  if (path === SCRIPT_PATH) return { status: 200, type: contentType(path), body: LIVE_SCRIPT };
  const file = findFile(siteDir, path);
  return (file === null ? null : fileReply(200, file)) ?? missing(siteDir);
}

/** A page elsewhere that makes its own name point here must not read along. */
function isLocal(host: string | undefined): boolean {
  return /^(127\.0\.0\.1|localhost|\[::1\])(:\d+)?$/i.test(host ?? '');
}

function missing(siteDir: string): Reply {
  const page = findFile(siteDir, '/404.html');
  const none =
    '<!doctype html><html lang="en"><title>Not found</title><body><p>There is no such page.</p></body></html>';
  const fallback = { status: 404, type: contentType('.html'), body: withLiveScript(none) };
  return (page === null ? null : fileReply(404, page)) ?? fallback;
}

function fileReply(status: number, file: string): Reply | null {
  const bytes = readWhole(file);
  if (bytes === null) return null;
  const type = contentType(file);
  return {
    status,
    type,
    body: type.startsWith('text/html') ? withLiveScript(bytes.toString('utf8')) : bytes,
  };
}

/** Between being found and being read a file can go: a swap is on. */
function readWhole(file: string): Buffer | null {
  try {
    return readFileSync(file);
  } catch {
    return null;
  }
}

function plain(status: number, text: string): Reply {
  return { status, type: contentType('.txt'), body: `${text}\n` };
}

function send(response: ServerResponse, { status, type, body }: Reply): void {
  response.writeHead(status, {
    'content-type': type,
    'content-length': Buffer.byteLength(body),
    'cache-control': 'no-store',
    'x-content-type-options': 'nosniff',
  });
  response.end(response.req.method === 'HEAD' ? undefined : body);
}
