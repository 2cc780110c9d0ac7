// Serves page.html and the core's browser bundle to this machine only, until it is stopped with Ctrl+C.
//
//   node serve-page.mjs [PORT]
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';

// Two addresses, two files: nothing of a request is used as a path. The bundle is found as Node finds the package.
const bundle = new URL(import.meta.resolve('@selvage/core/browser'));
const answers = {
  '/': [new URL('page.html', import.meta.url), 'text/html; charset=utf-8'],
  '/node_modules/@selvage/core/dist/browser.js': [bundle, 'text/javascript; charset=utf-8'],
};

const server = createServer(({ url }, response) => {
  const [file, type] = Object.hasOwn(answers, url) ? answers[url] : [];
  if (file === undefined) response.writeHead(404).end();
  else response.writeHead(200, { 'content-type': type }).end(readFileSync(file));
});

// 0 lets the system choose a free port.
server.listen(Number(process.argv[2] ?? 0), '127.0.0.1', () => {
  console.log(`http://127.0.0.1:${server.address().port}/`);
});
