import styles from './figures.module.css';

export interface ChartLine {
  readonly name: string;
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly dash?: string;
}

interface LineChartProps {
  /** The chart in a sentence. */
  readonly label: string;
  readonly lines: readonly ChartLine[];
  readonly x: {
    readonly name: string;
    readonly ticks: readonly { readonly at: number; readonly text: string }[];
  };
  readonly y: {
    readonly name: string;
    readonly ticks: readonly { readonly at: number; readonly text: string }[];
  };
  /** A point to mark. */
  readonly mark?: { readonly x: number; readonly y: number; readonly text: string };
  /** A range of x or y that is asked for. */
  readonly wanted?: { readonly from: number; readonly to: number };
}

const SIZE = { width: 460, height: 210, left: 44, right: 96, top: 12, bottom: 34 } as const;

/** A few lines over one axis each way; each named at its end and told apart by its dashes. */
export function LineChart({ label, lines, x, y, mark, wanted }: LineChartProps) {
  const range = (values: readonly number[]) => [Math.min(...values), Math.max(...values)] as const;
  const [x0, x1] = range([
    ...x.ticks.map(({ at }) => at),
    ...lines.flatMap(({ points }) => points.map(([at]) => at)),
  ]);
  const [y0, y1] = range([...y.ticks.map(({ at }) => at)]);
  const px = (at: number) => SIZE.left + ((at - x0) / (x1 - x0 || 1)) * (SIZE.width - SIZE.left - SIZE.right);
  const py = (at: number) =>
    SIZE.height - SIZE.bottom - ((at - y0) / (y1 - y0 || 1)) * (SIZE.height - SIZE.top - SIZE.bottom);
  const bottom = SIZE.height - SIZE.bottom;
  return (
    <svg className={styles.chart} viewBox={`0 0 ${SIZE.width} ${SIZE.height}`} role="img" aria-label={label}>
      {wanted && (
        <rect
          x={px(wanted.from)}
          width={Math.max(1.5, px(wanted.to) - px(wanted.from))}
          y={SIZE.top}
          height={bottom - SIZE.top}
          fill="var(--band)"
        />
      )}
      {y.ticks.map(({ at, text }) => (
        <g key={at}>
          <line
            x1={SIZE.left}
            x2={SIZE.width - SIZE.right}
            y1={py(at)}
            y2={py(at)}
            stroke="var(--rule)"
            strokeWidth={0.8}
          />
          <text x={SIZE.left - 6} y={py(at) + 4} textAnchor="end">
            {text}
          </text>
        </g>
      ))}
      {x.ticks.map(({ at, text }) => (
        <text key={at} x={px(at)} y={bottom + 15} textAnchor="middle">
          {text}
        </text>
      ))}
      <text x={SIZE.width - SIZE.right} y={SIZE.height - 4} textAnchor="end">
        {x.name}
      </text>
      <text x={SIZE.left} y={SIZE.height - 4}>
        {y.name}
      </text>
      {lines.map(({ name, points, dash }) => (
        <path
          key={name}
          d={points
            .map(
              ([at, value], index) =>
                `${index === 0 ? 'M' : 'L'}${px(at).toFixed(1)} ${py(Math.min(y1, Math.max(y0, value))).toFixed(1)}`,
            )
            .join('')}
          fill="none"
          stroke="var(--ink)"
          strokeWidth={1.6}
          strokeDasharray={dash}
        />
      ))}
      {namedEnds(lines, py).map(({ name, y: at }) => (
        <text key={name} x={SIZE.width - SIZE.right + 6} y={at + 4}>
          {name}
        </text>
      ))}
      {mark && (
        <g>
          <circle
            cx={px(mark.x)}
            cy={py(mark.y)}
            r={4.5}
            fill="var(--paper)"
            stroke="var(--ink)"
            strokeWidth={2}
          />
          <text className={styles.marked} x={px(mark.x) - 8} y={py(mark.y) - 9} textAnchor="end">
            {mark.text}
          </text>
        </g>
      )}
    </svg>
  );
}

/** Names beside the ends of their lines, pushed apart where they would lie on one another. */
function namedEnds(lines: readonly ChartLine[], py: (value: number) => number) {
  const ends = lines
    .map(({ name, points }) => ({ name, y: py(points.at(-1)?.[1] ?? 0) }))
    .map(({ name, y }) => ({ name, y: Math.min(SIZE.height - SIZE.bottom, Math.max(SIZE.top, y)) }))
    .sort((a, b) => a.y - b.y);
  let last = Number.NEGATIVE_INFINITY;
  return ends.map(({ name, y }) => {
    last = Math.max(y, last + 13);
    return { name, y: last };
  });
}

/** Round ticks from 0 to at least `most`: about `count` of them. */
export function roundTicks(most: number, count = 4): { at: number; text: string }[] {
  const raw = Math.max(most, 1e-9) / count;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = ([1, 2, 5, 10].find((factor) => factor * power >= raw) ?? 10) * power;
  const digits = Math.max(0, -Math.floor(Math.log10(step)));
  const ticks: { at: number; text: string }[] = [];
  for (let index = 0; ticks.length === 0 || (ticks.at(-1)?.at ?? 0) < most - 1e-9; index++)
    ticks.push({ at: index * step, text: (index * step).toFixed(digits) });
  return ticks;
}
