const WIDTH = 24;

/** One line on standard error that fills up; on anything but a terminal, a line at the start and at the end. */
export function progressLine(title: string, total: number): { to: (done: number) => void; end: () => void } {
  const { stderr } = process;
  const started = performance.now();
  if (!stderr.isTTY) stderr.write(`${title}, ${total} runs ...\n`);
  const draw = (done: number): void => {
    if (!stderr.isTTY) return;
    const filled = Math.round((done / total) * WIDTH);
    stderr.write(`\r${title}  ${'━'.repeat(filled)}${'╌'.repeat(WIDTH - filled)}  ${done} of ${total} runs`);
  };
  draw(0);
  return {
    to: draw,
    end() {
      const seconds = ((performance.now() - started) / 1000).toFixed(1);
      stderr.write(stderr.isTTY ? `  ${seconds} s\n` : `${total} runs in ${seconds} s\n`);
    },
  };
}
