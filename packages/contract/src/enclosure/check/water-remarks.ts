import { alkalinityOf, convert } from '@shoreglass/engine';
import type { Library } from '@shoreglass/library';
import { ownWater, statedAlkalinity, waterFinder } from '../plan/water-of.ts';
import type { KeyPath } from '../read/problem.ts';
import type { EnclosureContent } from '../schema/enclosure.ts';
import type { Blend, OwnWater } from '../schema/water.ts';
import type { Remark } from './finding.ts';

/** Charges of a sound analysis agree within 5 % of their sum. @source appelo-postma-2005, electroneutrality of analyses */
const TOLERATED_IMBALANCE = 0.05;
/** Differences below this are within the reading of ordinary analyses [eq/m3]. */
const TOLERATED_SURPLUS = 0.1;

const percent = (share: number) => `${(share * 100).toFixed(1)} %`;
const milli = (charge: number) => `${charge.toFixed(2)} meq/L`;

function chargeRemark(own: OwnWater, path: KeyPath): Remark[] {
  const { name, imbalance, surplus, alkalinity, composition } = ownWater(own);
  const source = 'Appelo & Postma, Geochemistry, groundwater and pollution: electroneutrality of analyses';
  if (alkalinity === undefined) {
    const implied = alkalinityOf(composition);
    if (implied >= -TOLERATED_SURPLUS) return [];
    return [
      {
        severity: 'blocking',
        path,
        message: `the negative ions of ${name} outweigh the positive ones by ${milli(-implied)}: such a water would be a strong acid`,
        mend: 'Check the figures and their units (mg/L or mmol/L, as NO3 or as N); an ion may be missing.',
        source,
      },
    ];
  }
  if (Math.abs(surplus) <= TOLERATED_SURPLUS || imbalance === 0) return [];
  const side =
    surplus > 0 ? 'positive ions outweigh the negative ones' : 'negative ions outweigh the positive ones';
  if (imbalance > TOLERATED_IMBALANCE)
    return [
      {
        severity: 'blocking',
        path,
        message: `the charges of ${name} do not add up: the ${side} by ${milli(Math.abs(surplus))}, ${percent(imbalance)} of all charges`,
        mend: 'More than 5 % cannot be. Check the figures and their units; an ion may be missing.',
        source,
      },
    ];
  return [
    {
      severity: 'note',
      path,
      message: `the charges of ${name} agree within ${percent(imbalance)}; the difference of ${milli(Math.abs(surplus))} is taken as ${surplus > 0 ? 'chloride' : 'sodium'}, so that the alkalinity is as measured`,
      mend: 'Nothing to do.',
      source,
    },
  ];
}

function completenessRemark(own: OwnWater, path: KeyPath): Remark[] {
  const knowsIons = own.calcium !== undefined || own.magnesium !== undefined;
  if (knowsIons) return [];
  if (own.hardness !== undefined && statedAlkalinity(own) !== undefined) {
    const { assumed } = ownWater(own);
    return assumed.map((message) => ({
      severity: 'note',
      path,
      message,
      mend: 'A full analysis of the supplier makes the outlook firmer.',
    }));
  }
  return [
    {
      severity: 'blocking',
      path,
      message: `the water '${own.id}' says neither its ions nor both hardness and alkalinity`,
      mend: 'Give calcium, magnesium, sodium, potassium, chloride, sulfate and alkalinity; or hardness (GH) and alkalinity (KH).',
    },
  ];
}

function blendRemark(blend: Blend, path: KeyPath): Remark[] {
  if (typeof blend === 'string') return [];
  const total = blend.reduce((sum, { share }) => sum + share, 0);
  if (Math.abs(total - 1) <= 0.005) return [];
  return [
    {
      severity: 'blocking',
      path,
      message: `the shares of the blend add up to ${percent(total)}`,
      mend: 'Make them add up to 100 %.',
    },
  ];
}

/** Waters that cannot be, or are known only in part. */
export function waterRemarks({ waters = [], water }: EnclosureContent): Remark[] {
  return [
    ...waters.flatMap((own, index) => {
      const missing = completenessRemark(own, ['waters', index]);
      return missing.length > 0 ? missing : chargeRemark(own, ['waters', index]);
    }),
    ...blendRemark(water.fill, ['water', 'fill']),
    ...blendRemark(water['top-off'], ['water', 'top-off']),
  ];
}

/** [mol/m3] above which topping off builds hardness up within a year in an open enclosure. */
const HARD_TOP_OFF = 0.5;

/** A top-off that brings minerals, which evaporation leaves behind. */
export function topOffRemarks(content: EnclosureContent, library: Library): Remark[] {
  const { routines = [], actions = [], water } = content;
  const remarks: Remark[] = [];
  const topOff = water['top-off'];
  const find = waterFinder(content, library);
  const parts = typeof topOff === 'string' ? [{ water: topOff, share: 1 }] : topOff;
  const hardness = parts.reduce((sum, part) => {
    const { calcium, magnesium } = find(part.water).composition;
    return sum + part.share * (calcium + magnesium);
  }, 0);
  if (hardness > HARD_TOP_OFF)
    remarks.push({
      severity: 'warning',
      path: ['water', 'top-off'],
      message: `the top-off brings ${convert(hardness, 'mmol/L', '°dGH').toFixed(1)} °dGH of hardness each time, and evaporation leaves it behind`,
      mend: 'Top off with rain, distilled or reverse osmosis water.',
    });
  if (![...routines, ...actions].some((care) => care.do === 'top-off'))
    remarks.push({
      severity: 'warning',
      path: ['routines'],
      message: 'nothing replaces the water that evaporates',
      mend: 'Add the routine { do: top-off, every: 4 d }.',
    });
  return remarks;
}
