/** A plain web server for a folder, below a sub-path, as any static host would stand there. */
import { readFileSync } from 'node:fs';
import { createServer, type OutgoingHttpHeaders, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { brotliCompressSync, constants } from 'node:zlib';

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.pdf': 'application/pdf',
  '.webmanifest': 'application/manifest+json',
};

export interface SiteServer {
  /** With a slash at its end. */
  address: string;
  close(): Promise<void>;
}

export interface Serving {
  /** '/' for the root. */
  below?: string;
  /** Sent with every answer. */
  headers?: OutgoingHttpHeaders;
  port?: number;
  /** Texts that stand in place of files, by path. */
  changed?: ReadonlyMap<string, string>;
  /** Texts as a host sends them: Brotli at the quality that can be had while one waits. */
  compressed?: boolean;
}

const QUALITY = { [constants.BROTLI_PARAM_QUALITY]: 5 };
const IS_TEXT = /^(text|image\/svg|application\/manifest)/;

/** Serves a folder, below a sub-path where nothing else is said. */
export async function serveSite(folder: string, serving: Serving = {}): Promise<SiteServer> {
  const { below = '/some/where/', headers = {}, port = 0, changed, compressed = false } = serving;
  const packed = new Map<string, Buffer>();
  const bodyOf = (file: string): Buffer => {
    const known = packed.get(file);
    if (known !== undefined) return known;
    const text = changed?.get(file);
    const body = text === undefined ? readFileSync(join(folder, file)) : Buffer.from(text);
    if (!compressed || !IS_TEXT.test(TYPES[extname(file)] ?? '')) return body;
    packed.set(file, brotliCompressSync(body, { params: QUALITY }));
    return bodyOf(file);
  };
  const server: Server = createServer(({ url = '' }, response) => {
    const path = decodeURI(new URL(url, 'http://localhost').pathname);
    try {
      if (!path.startsWith(below)) throw new Error('outside the site');
      const file = path.slice(below.length);
      const body = bodyOf(file);
      const type = TYPES[extname(path)] ?? 'application/octet-stream';
      const encoding = packed.has(file) ? { 'content-encoding': 'br' } : {};
      response.writeHead(200, { 'content-type': type, ...encoding, ...headers }).end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((ready) => server.listen(port, '127.0.0.1', ready));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}${below}`,
    close: () => {
      // No request may be answered by chance from a connection still open.
      server.closeAllConnections();
      return new Promise((closed) => server.close(() => closed()));
    },
  };
}
