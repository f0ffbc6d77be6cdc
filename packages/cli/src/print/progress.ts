const WIDTH = 24;

export interface ProgressLine {
  /** Runs done; the total too where it has changed. */
  to(done: number, total?: number): void;
  end(): void;
}

/** One line on standard error that fills up; on anything but a terminal, a line at the start and at the end. */
export function progressLine(title: string, expected: number): ProgressLine {
  let total = expected;
  let finished = 0;
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
    to(done, of = total) {
      total = of;
      finished = done;
      draw(done);
    },
    end() {
      const seconds = ((performance.now() - started) / 1000).toFixed(1);
      stderr.write(stderr.isTTY ? `  ${seconds} s\n` : `${finished} runs in ${seconds} s\n`);
    },
  };
}
