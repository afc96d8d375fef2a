import { once } from 'node:events';
import { existsSync, statSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { constants } from 'node:zlib';
import compression from 'compression';
import sirv from 'sirv';
import { headerRules } from './headers.ts';
import { squeezeAll } from './squeeze-all.ts';

export interface Served {
  /** Address of the site's home page; ends with a slash. */
  readonly url: string;
  readonly close: () => Promise<void>;
}

export interface ServeOptions {
  /** Path below which the site is served, such as `/some/where/`. */
  readonly base?: string;
  /**
   * Whether texts travel compressed: as small as a good static host sends them, which keeps them so beside
   * the files and makes nobody wait for it, or with less work.
   */
  readonly compress?: boolean | 'quickly';
  /** Whether it sends the headers of `_headers`; a host that knows no such file sends none. */
  readonly headers?: boolean;
  /** Whether the host lacks a file just now; its path starts at the site's home. */
  readonly lacks?: (path: string) => boolean;
  /** Whether the line is cut just now when a file is asked for; its path starts at the site's home. */
  readonly cut?: (path: string) => boolean;
}

/** A page of no site, below every site's home, where a browser rests between two visits. */
export const BLANK = 'blank-page-of-the-tests';

const squeezer = (quality: number) =>
  compression({
    threshold: 0,
    brotli: { params: { [constants.BROTLI_PARAM_QUALITY]: quality } },
  });

/** The page for a missing address, with its status, as static hosts give it. */
async function missing(directory: string, response: ServerResponse): Promise<void> {
  const page = join(directory, '404.html');
  response.statusCode = 404;
  response.setHeader('Content-Type', 'text/html;charset=utf-8');
  response.end(existsSync(page) ? await readFile(page) : 'Not found');
}

/**
 * Serves a built site on a free port of this machine, the way a plain static host does: right
 * types, the headers of `_headers`, `index.html` for a folder, a redirect to the folder's slash, and the site's own 404 page.
 * Files are read anew for each request, so a test may change them.
 */
export async function serve(
  directory: string,
  {
    base = '/',
    compress = false,
    headers: sent = true,
    lacks = () => false,
    cut = () => false,
  }: ServeOptions = {},
): Promise<Served> {
  if (!existsSync(join(directory, 'index.html'))) {
    throw new Error(`There is no built site in ${directory}. Run "npm run build" first.`);
  }
  const keptSmall = compress === true;
  if (keptSmall) await squeezeAll(directory);
  const files = sirv(directory, {
    dev: true,
    etag: true,
    brotli: keptSmall,
    extensions: [],
    onNoMatch: (_, response) => void missing(directory, response),
  });

  const rules = sent ? headerRules(directory) : [];
  const answer = (request: IncomingMessage, response: ServerResponse): void => {
    const { pathname, search } = new URL(request.url ?? '/', 'http://localhost');
    if (cut(pathname.slice(base.length))) {
      request.socket.destroy();
      return;
    }
    if (pathname === base + BLANK) {
      response.setHeader('Content-Type', 'text/html;charset=utf-8');
      response.end('<!doctype html><link rel="icon" href="data:,"><title>Blank</title>');
      return;
    }
    if (!pathname.startsWith(base) || lacks(pathname.slice(base.length))) {
      void missing(directory, response);
      return;
    }
    const within = decodeURIComponent(pathname.slice(base.length));
    for (const { path, headers } of rules) {
      if (path.test(`/${within}`)) for (const header of headers) response.setHeader(...header);
    }
    const folder = statSync(join(directory, within), { throwIfNoEntry: false })?.isDirectory();
    if (folder && !pathname.endsWith('/')) {
      response.writeHead(301, { Location: `${pathname}/${search}` }).end();
      return;
    }
    const index = pathname.endsWith('/') ? 'index.html' : '';
    request.url = `/${pathname.slice(base.length)}${index}${search}`;
    files(request, response);
  };

  const squeeze = squeezer(compress === 'quickly' ? 1 : constants.BROTLI_MAX_QUALITY);
  const server = createServer((request, response) => {
    if (!compress) return answer(request, response);
    // The types differ only in Express's additions, which it does not need.
    squeeze(request as never, response as never, () => answer(request, response));
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}${base}`,
    close: async () => {
      server.closeAllConnections();
      server.close();
      await once(server, 'close');
    },
  };
}
