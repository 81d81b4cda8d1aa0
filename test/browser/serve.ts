// Serves dist/ to the browser of the tests: files only, this machine only.
import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { extname, join, normalize } from 'node:path';

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.png': 'image/png',
  '.xml': 'text/xml',
};

export async function serve(folder: string): Promise<{ origin: string; server: Server }> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const file = join(folder, normalize(pathname === '/' ? '/index.html' : pathname));
    readFile(file).then(
      content => response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' }).end(content),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('the server has no port');
  return { origin: `http://127.0.0.1:${address.port}`, server };
}
