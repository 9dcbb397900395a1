import { createReadStream } from 'node:fs';
import { realpath, stat } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { extname, join, sep } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { contentSecurityPolicy } from './policy.ts';

/** A folder on show at an address of this computer, until it is closed. */
export interface Served {
  readonly address: string;
  readonly port: number;
  readonly close: () => Promise<void>;
}

/** Nothing was served: the sentence says why and what to do. */
export class ServeFault extends Error {}

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
};

const headers = {
  'Content-Security-Policy': `${contentSecurityPolicy}; frame-ancestors 'none'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'no-cache',
};

/** A browser may take `localhost` for either of these, so the port has to be ours on both. */
const loopback = ['127.0.0.1', '::1'] as const;

/** Ports tried after the first before giving up. */
const portsTried = 50;

/** Serves a folder to this computer only: on `port` exactly, or on the first free one from `from` up. */
export async function serve(
  folder: string,
  at: { readonly port: number } | { readonly from: number },
): Promise<Served> {
  const root = await realpath(folder);
  const first = 'port' in at ? at.port : at.from;
  const last = 'port' in at ? at.port : Math.min(at.from + portsTried, 65_535);
  for (let port = first; port <= last; port++) {
    const servers = await listen(root, port);
    if (servers.length > 0) {
      return {
        address: `http://localhost:${port}/`,
        port,
        close: async () => {
          await Promise.all(servers.map(close));
        },
      };
    }
  }
  throw new ServeFault(
    first === last
      ? `Port ${first} is taken by another program. Stop that program, or choose a port with --port.`
      : `Every port from ${first} to ${last} is taken. Choose a free one with --port.`,
  );
}

/** The servers that listen on a port, or none when another program has it. */
async function listen(root: string, port: number): Promise<readonly Server[]> {
  const servers: Server[] = [];
  for (const host of loopback) {
    const server = createServer((request, response) => {
      answer(root, request, response).catch(() => response.destroy());
    });
    const fault = await new Promise<NodeJS.ErrnoException | null>((resolve) => {
      server.once('error', resolve);
      server.listen(port, host, () => resolve(null));
    });
    if (fault === null) {
      servers.push(server);
    } else if (fault.code === 'EADDRINUSE') {
      await Promise.all(servers.map(close));
      return [];
    } else if (fault.code === 'EACCES') {
      throw new ServeFault(`This account may not open port ${port}. Choose one above 1023 with --port.`);
    } else if (fault.code !== 'EADDRNOTAVAIL' && fault.code !== 'EAFNOSUPPORT') {
      throw fault;
    }
  }
  if (servers.length === 0) throw new ServeFault('This computer has no loopback address to serve on.');
  return servers;
}

async function close(server: Server): Promise<void> {
  await new Promise((resolve) => {
    server.close(resolve);
    server.closeAllConnections();
  });
}

async function answer(root: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    refuse(response, 405, 'Only GET and HEAD are answered here.', { Allow: 'GET, HEAD' });
    return;
  }
  const file = await fileFor(root, request.url ?? '/');
  if (file === null) {
    refuse(response, 404, 'There is no such file here.');
    return;
  }
  response.writeHead(200, {
    ...headers,
    'Content-Type': types[extname(file.path).toLowerCase()] ?? 'application/octet-stream',
    'Content-Length': file.size,
  });
  if (request.method === 'HEAD') response.end();
  else await pipeline(createReadStream(file.path), response);
}

/** The file under `root` that a request asks for; null for everything else, links that lead out included. */
async function fileFor(root: string, url: string): Promise<{ path: string; size: number } | null> {
  const asked = url.split(/[?#]/, 1)[0] ?? '/';
  let path: string;
  try {
    path = decodeURIComponent(asked);
  } catch {
    return null;
  }
  if (!path.startsWith('/') || path.includes('\0') || path.includes('\\')) return null;
  try {
    const real = await realpath(join(root, path.endsWith('/') ? `${path}index.html` : path));
    if (!real.startsWith(root + sep)) return null;
    const found = await stat(real);
    return found.isFile() ? { path: real, size: found.size } : null;
  } catch {
    return null;
  }
}

function refuse(response: ServerResponse, status: number, sentence: string, extra: object = {}): void {
  response.writeHead(status, { ...headers, ...extra, 'Content-Type': 'text/plain; charset=utf-8' });
  response.end(`${sentence}\n`);
}
