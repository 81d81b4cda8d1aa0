// The server for Excel: https at the address of the manifest, and what Excel asks it for.
import { readFileSync } from 'node:fs';
import { get } from 'node:https';
import type { AddressInfo } from 'node:net';
import { createRequire } from 'node:module';
import type { IncomingHttpHeaders } from 'node:http';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { BUILT } from './excel';

const load = createRequire(import.meta.url);
const webpack = load('webpack') as (config: object) => object;
const Server = load('webpack-dev-server') as new (
  options: object,
  compiler: object,
) => { start(): Promise<void>; stop(): Promise<void>; server: { address(): AddressInfo } };
const { default: config } = (await import(new URL('../../webpack.config.js', import.meta.url).href)) as {
  default: (env: object, args: object) => { devServer: Record<string, unknown> };
};
const { devServer } = config({ excel: true }, { mode: 'development' });

let server: InstanceType<typeof Server>;
let origin: string;

interface Answer {
  readonly status: number | undefined;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

const asked = (file: string): Promise<Answer> =>
  new Promise((resolve, reject) => {
    // the certificate is the server's own: that it is encrypted is what counts here
    get(`${origin}/${file}`, { rejectUnauthorized: false, headers: { origin: 'https://elsewhere.test' } }, response => {
      let body = '';
      response
        .setEncoding('utf8')
        .on('data', (part: string) => (body += part))
        .on('end', () => resolve({ status: response.statusCode, headers: response.headers, body }));
    }).on('error', reject);
  });

// The built files in the place of those that are compiled while it runs.
beforeAll(async () => {
  server = new Server(
    { ...devServer, port: 0, static: BUILT, onListening: undefined },
    webpack({ mode: 'none', entry: {}, infrastructureLogging: { level: 'none' } }),
  );
  await server.start();
  origin = `https://localhost:${server.server.address().port}`;
});
afterAll(() => server.stop());

test('it is the address that the manifest names', () => {
  const manifest = readFileSync('manifest.xml', 'utf8');
  const origins = new Set([...manifest.matchAll(/DefaultValue="(https?:\/\/[^/"]+)/g)].map(([, one]) => one));
  expect(origins).toEqual(new Set([`https://localhost:${String(devServer['port'])}`]));
  expect(devServer['host']).toBe('localhost');
});

test.each([
  ['manifest.xml', 'xml', '<OfficeApp'],
  ['pane.html', 'text/html', 'functions.js'],
  ['functions.js', 'javascript', 'associate'],
  ['functions.json', 'application/json', 'BOSS.OD'],
  ['icons/icon-32.png', 'image/png', 'PNG'],
])('%s is answered at https, to Excel on the web too', async (file, type, content) => {
  const { status, headers, body } = await asked(file);
  expect(status).toBe(200);
  expect(headers['content-type']).toContain(type);
  expect(headers['access-control-allow-origin']).toBe('*');
  expect(headers['x-frame-options']).toBeUndefined();
  expect(body).toContain(content);
});

test('what is not there is not answered', async () => {
  expect((await asked('nothing.js')).status).toBe(404);
});
