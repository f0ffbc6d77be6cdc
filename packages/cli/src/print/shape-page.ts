import { cutAt, fieldGrid, type Plan } from '@shoreglass/engine';
import {
  palette as paletteOf,
  planViewScene,
  sceneToSvg,
  sectionHeight,
  sectionScene,
} from '@shoreglass/figures';
import type { SheetPart } from './shape-lines.ts';

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

const STYLE = `
body { font: 11pt/1.4 "Atkinson Hyperlegible", system-ui, sans-serif; color: #24302c; background: #fff; margin: 1.5cm auto; max-width: 19cm; padding: 0 0.5cm; }
h1 { font-size: 18pt; margin: 0 0 0.2em; } h2 { font-size: 12.5pt; margin: 1.2em 0 0.3em; border-bottom: 1px solid #24302c; }
table { border-collapse: collapse; font-size: 9.5pt; font-variant-numeric: tabular-nums; }
td { padding: 0.12em 0.9em 0.12em 0; vertical-align: top; } td + td { text-align: right; }
p { margin: 0.35em 0; font-size: 9.5pt; } svg { width: 100%; height: auto; } section { break-inside: avoid; }
.drawings { display: grid; gap: 0.6cm; }
@page { size: A4; margin: 1.2cm; } @media print { body { margin: 0 auto; } }`;

const DRAWN_WIDTH = 720;

/** The section through the middle and the view from above, as SVG. */
export function shapeDrawings(plan: Plan): string[] {
  const palette = paletteOf('day');
  const straight = { ...plan, zones: cutAt(plan) };
  const section = {
    width: DRAWN_WIDTH,
    height: sectionHeight({ plan: straight, width: DRAWN_WIDTH, labels: false }),
  };
  const planHeight = Math.round((DRAWN_WIDTH * plan.box.width) / plan.box.length) + 60;
  return [
    sceneToSvg(
      sectionScene({
        plan: straight,
        day: { day: 0, populations: {} },
        size: section,
        palette,
        labels: false,
        layerNames: true,
      }),
    ),
    sceneToSvg(
      planViewScene({
        plan,
        field: fieldGrid(plan),
        size: { width: DRAWN_WIDTH, height: planHeight },
        palette,
        unit: 'cm',
        grid: true,
      }),
    ),
  ];
}

function partHtml({ heading, rows, sentences }: SheetPart): string {
  const cells = rows
    .map((row) => `<tr>${row.map((cell) => `<td>${escaped(cell)}</td>`).join('')}</tr>`)
    .join('');
  const tableText = rows.length > 0 ? `<table>${cells}</table>` : '';
  return `<section><h2>${escaped(heading)}</h2>${tableText}${sentences.map((one) => `<p>${escaped(one)}</p>`).join('')}</section>`;
}

/** The sheet as a page of its own, to print: drawings to scale, figures, cautions. */
export function shapePage(plan: Plan, parts: readonly SheetPart[]): string {
  const { length, width, height } = plan.box;
  const size = [length, width, height].map((side) => `${(side * 100).toFixed(0)}`).join(' × ');
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>${escaped(plan.name)}</title><style>${STYLE}</style></head>
<body><h1>${escaped(plan.name)}</h1><p>${size} cm inside, from ${escaped(plan.startDate)}</p>
<div class="drawings">${shapeDrawings(plan).join('')}</div>
${parts.map(partHtml).join('\n')}
</body></html>
`;
}
