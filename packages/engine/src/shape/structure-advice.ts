import type { TopEdge } from '../structure/pane-under-water.ts';
import type { PaneFigures } from './shape-sheet.ts';

/** Stress above which the figures speak against the glass, and factor below which a professional is asked. @source assumed */
const WARN = 6e6;
const REFUSE = 7e6;
const ASK_BELOW = 1.5;

const mm = (metres: number): string => `${(metres * 1000).toFixed(1)} mm`;
const cm = (metres: number): string => `${(metres * 100).toFixed(0)} cm`;
const MPa = (pascal: number): string => `${(pascal / 1e6).toFixed(1)} MPa`;

const stressOf = ({ planned, full }: PaneFigures): number => planned?.stress ?? full?.stress ?? 0;

function worstOf(panes: readonly PaneFigures[]): PaneFigures | undefined {
  return panes
    .filter(({ full }) => full !== undefined)
    .reduce<PaneFigures | undefined>(
      (worst, pane) => (!worst || stressOf(pane) > stressOf(worst) ? pane : worst),
      undefined,
    );
}

function stressSentences(pane: PaneFigures, thickness: number): string[] {
  const { full, planned, least, stock, fillTo } = pane;
  const sentences = [
    ...(planned
      ? [
          `The ${pane.pane} pane bears most: ${MPa(planned.stress)} and ${mm(planned.deflection)} of bend with ${cm(planned.depth)} of water or ground against it, ${MPa(full!.stress)} and ${mm(full!.deflection)} full to the rim.`,
        ]
      : []),
    `Strength over stress: ${planned ? `${planned.factor.toFixed(1)} as planned, ` : ''}${full!.factor.toFixed(1)} full, for annealed float glass, ten years of load and one pane in a thousand breaking.`,
  ];
  if (fillTo !== undefined && fillTo < pane.height - 1e-6)
    sentences.push(
      `The working stress taken here is reached with ${cm(fillTo)}: do not fill it deeper, not even to look for leaks. Full to the rim it would need ${mm(least!)}${stock === undefined ? ', more than ordinary stock' : `, ${Math.round(stock * 1000)} mm on sale`}; it has ${mm(thickness)}.`,
    );
  const stress = planned?.stress ?? full!.stress;
  if (stress > REFUSE)
    sentences.push(
      'Do not build it so: the figure is above 7 MPa. Choose thicker glass, a rim or braces, or less water.',
    );
  else if (stress > WARN || (planned ?? full!).factor < ASK_BELOW)
    sentences.push(
      'Ask a glazier or structural engineer before building: little is left for chips, poor joints and knocks.',
    );
  if ((planned ?? full!).deflection > thickness / 2)
    sentences.push('The bend is more than half the thickness, where these formulas no longer hold well.');
  return sentences;
}

/**
 * Returns what the figures of the panes say in sentences, what they assume and when to ask a professional.
 * @param panes figures of all panes
 * @param thickness of the glass [m]
 * @param topEdge free or braced
 * @source derived; limits assumed
 */
export function structureAdvice(
  panes: readonly PaneFigures[],
  thickness: number,
  topEdge: TopEdge,
): string[] {
  const worst = worstOf(panes);
  const outside = panes.flatMap((pane) => (pane.outside ? [`The ${pane.pane} pane: ${pane.outside}.`] : []));
  return [
    ...(worst ? stressSentences(worst, thickness) : []),
    ...outside,
    `Taken as ${topEdge === 'free' ? 'rimless' : 'rimmed'}: ${topEdge === 'free' ? 'the upper edge is free' : 'a rim or braces hold the upper edge along its whole length'}; sides and base held by sound joints, the base resting flat on its whole area.`,
    'Ground against a pane is counted as water of its height; wet gravel below the water can press by half more.',
    'A first estimate for an ideal pane: no chips, uneven stand, lifting or knocks. It is no permission to build; a professional decides where people, homes or animals are at risk.',
  ];
}
