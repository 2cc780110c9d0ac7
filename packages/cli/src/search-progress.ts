/** Says on a terminal how far the search is; anywhere else nothing. At most ten times a second. */
export function progressLine(): {
  readonly show: (share: number, evaluated: number) => void;
  readonly end: () => void;
} {
  const { stderr } = process;
  if (stderr.isTTY !== true) return { show: () => undefined, end: () => undefined };
  const start = performance.now();
  let [last, shown] = [start, false];
  return {
    show(share, evaluated) {
      const now = performance.now();
      if (now - last < 100) return;
      last = now;
      shown = true;
      const seconds = (now - start) / 1000;
      const left = share > 0 ? (seconds * (1 - share)) / share : 0;
      const rate = Math.round(evaluated / seconds).toLocaleString('en-US');
      const count = evaluated.toLocaleString('en-US');
      stderr.write(
        `\r\x1b[K${(100 * share).toFixed(0)} %, ${count} candidates, ${rate} a second, ${inWords(left)} left`,
      );
    },
    end() {
      if (shown) stderr.write('\r\x1b[K');
    },
  };
}

function inWords(seconds: number): string {
  if (seconds < 90) return `${Math.ceil(seconds)} s`;
  return seconds < 5400 ? `${Math.ceil(seconds / 60)} min` : `${(seconds / 3600).toFixed(1)} h`;
}
