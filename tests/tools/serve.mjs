// Serves the built app as a plain static host would. `npm start` runs this; tests import it.
import { createReadStream, existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

export const DIST = fileURLToPath(new URL('../../dist/', import.meta.url));

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
};

/** The policy of the page, for the header: a meta tag does not bind workers. */
const policyOf = (dir) => {
  const page = readFileSync(join(dir, 'index.html'), 'utf8');
  const content = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(page)?.[1];
  if (!content)
    throw new Error(`${dir}index.html carries no Content-Security-Policy: build it with vite build`);
  return `${content.replaceAll('&#39;', "'")}; frame-ancestors 'none'`;
};

const listen = (server, port, host) =>
  new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      server.off('error', reject);
      resolve();
    });
  });

/**
 * Serves `dir` under `base` ("/" or "/some/path/") on `port` or the next free one. `onRequest` sees every request.
 * Returns the address and how to stop, open connections included.
 * @param {{ dir?: string, base?: string, port?: number, host?: string, onRequest?: (request: import('node:http').IncomingMessage) => void }} [options]
 */
export const serve = async ({
  dir = DIST,
  base = '/',
  port = 4173,
  host = 'localhost',
  onRequest = () => {},
} = {}) => {
  const policy = policyOf(dir);
  const server = createServer((request, response) => {
    onRequest(request);
    const { pathname } = new URL(request.url, 'http://localhost');
    const inside = pathname.startsWith(base)
      ? normalize(decodeURIComponent(pathname.slice(base.length)))
      : '..';
    const file = join(dir, inside.endsWith('/') || inside === '.' ? join(inside, 'index.html') : inside);
    if (inside.startsWith('..') || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404, { 'Content-Type': 'text/plain' }).end('not found\n');
      return;
    }
    response.writeHead(200, {
      'Content-Type': TYPES[extname(file)] ?? 'application/octet-stream',
      'Cache-Control': 'no-cache',
      'Content-Security-Policy': policy,
      'X-Content-Type-Options': 'nosniff',
    });
    createReadStream(file).pipe(response);
  });
  for (let tried = port; ; tried += 1) {
    try {
      await listen(server, tried, host);
      break;
    } catch (error) {
      if (error.code !== 'EADDRINUSE' || tried >= port + 50) throw error;
    }
  }
  return {
    url: `http://localhost:${server.address().port}${base}`,
    stop: () =>
      new Promise((resolve) => {
        server.close(resolve);
        server.closeAllConnections();
      }),
  };
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { url } = await serve({ port: Number(process.env.PORT ?? 4173) });
  console.log(`Lidwright: ${url}`);
}
