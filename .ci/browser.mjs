// Makes sure that the tests have what they use if it is there: a Chromium for the page tests, GNU parallel for the guide to searches. Installs Debian's
// packages where that is possible (root, apt-get). Never fails: without them those tests are skipped, and this says so.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const wanted = [
  {
    name: 'Chromium',
    tests: 'the page tests',
    places: [process.env.CHROMIUM, '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'],
    packages: ['chromium', 'fonts-dejavu-core'],
  },
  {
    name: 'GNU parallel',
    tests: 'one test of the guide to searches',
    places: ['/usr/bin/parallel', '/usr/local/bin/parallel'],
    packages: ['parallel'],
  },
];
const placeOf = ({ places }) => places.find((place) => place !== undefined && place !== '' && existsSync(place));
const run = (...args) => spawnSync('apt-get', args, { stdio: 'ignore', timeout: 300_000 }).status === 0;

const missing = wanted.filter((one) => placeOf(one) === undefined);
if (missing.length > 0 && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
  const packages = missing.flatMap((one) => one.packages);
  process.stdout.write(`installing ${packages.join(', ')}\n`);
  run('update');
  run('install', '-y', '--no-install-recommends', ...packages);
}
for (const one of wanted) {
  const place = placeOf(one);
  process.stdout.write(
    place === undefined ? `no ${one.name}: ${one.tests} will be skipped\n` : `${one.tests} will use ${place}\n`,
  );
}
