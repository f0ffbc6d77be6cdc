import type { Calculation, Figures } from '../harness/check.ts';
import { AIR_EXCHANGE } from './equations/air-exchange.ts';
import { EVAPORATION } from './equations/evaporation.ts';
import { HEAT } from './equations/heat.ts';
import { HYDRAULICS } from './equations/hydraulics.ts';
import { LIGHT } from './equations/light.ts';
import { MATERIALS } from './equations/materials.ts';
import { MOIST_AIR } from './equations/moist-air.ts';
import { PRECAUTIONS } from './equations/precautions.ts';
import { STRUCTURE } from './equations/structure.ts';
import { WATER } from './equations/water.ts';

/**
 * What computes each equation of the physics checks, by the equation's id. A check that names several ids at once
 * ('P2,P5,P6') is computed by an entry of exactly that name, or else by its parts, each giving the figures it has.
 */
export const EQUATIONS: Readonly<Record<string, Calculation>> = {
  ...MOIST_AIR,
  ...EVAPORATION,
  ...AIR_EXCHANGE,
  ...HEAT,
  ...LIGHT,
  ...WATER,
  ...HYDRAULICS,
  ...STRUCTURE,
  ...MATERIALS,
  ...PRECAUTIONS,
};

/** The calculation of one or several equations; undefined when one of them is missing. */
export function calculationOf(key: string): Calculation | undefined {
  if (Object.hasOwn(EQUATIONS, key)) return EQUATIONS[key];
  const parts = key.split(',').map((part) => part.trim());
  const calculations = parts.map((part) => (Object.hasOwn(EQUATIONS, part) ? EQUATIONS[part] : undefined));
  if (parts.length < 2 || calculations.includes(undefined)) return undefined;
  return (inputs, wanted) => {
    const figures: Record<string, Figures[string]> = {};
    for (const calculation of calculations) {
      for (const [name, figure] of Object.entries(calculation!(inputs, wanted))) figures[name] ??= figure;
    }
    return figures;
  };
}
