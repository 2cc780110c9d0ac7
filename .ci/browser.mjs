// Makes sure that the page tests have a Chromium: finds one, or installs Debian's package where that is possible (root, apt-get).
// Never fails: without a browser the page tests are skipped, and this says so.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const places = [process.env.CHROMIUM, '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
const found = () => places.find((place) => place !== undefined && place !== '' && existsSync(place));
const run = (...args) => spawnSync('apt-get', args, { stdio: 'ignore', timeout: 300_000 }).status === 0;

if (found() === undefined && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
  process.stdout.write('no Chromium found: installing the package chromium\n');
  run('update');
  run('install', '-y', '--no-install-recommends', 'chromium', 'fonts-dejavu-core');
}
const browser = found();
process.stdout.write(
  browser === undefined ? 'no Chromium: the page tests will be skipped\n' : `page tests will use ${browser}\n`,
);
