import type { Calculation, Figure, Figures } from '../../harness/check.ts';

export function figure(value: number, unit: string): Figure {
  return { value, unit };
}

/**
 * A calculation that takes part only when one of its figures is wanted: in checks that join several equations each
 * finds its own inputs.
 */
export function whenAsked(names: readonly string[], calculation: Calculation): Calculation {
  return (inputs, wanted) => (names.some((name) => wanted.has(name)) ? calculation(inputs, wanted) : {});
}

/** Joins calculations; the first to give a figure wins. */
export function joined(...calculations: readonly Calculation[]): Calculation {
  return (inputs, wanted) => {
    const figures: Record<string, Figures[string]> = {};
    for (const calculation of calculations) {
      for (const [name, found] of Object.entries(calculation(inputs, wanted))) figures[name] ??= found;
    }
    return figures;
  };
}
