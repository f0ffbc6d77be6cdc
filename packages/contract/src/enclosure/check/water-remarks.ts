import { ATMOSPHERE, alkalinityOf, convert, MOLAR_MASS, recipeWater } from '@shoreglass/engine';
import type { Library } from '@shoreglass/library';
import { knowsHardness, ownWater, statedAlkalinity } from '../plan/analysis.ts';
import { waterFinder } from '../plan/water-of.ts';
import type { KeyPath } from '../read/problem.ts';
import type { EnclosureContent } from '../schema/enclosure.ts';
import type { Blend, OwnWater } from '../schema/water.ts';
import type { Remark } from './finding.ts';

/** Charges of a sound analysis agree within 5 % of their sum. @source appelo-postma-2005, electroneutrality of analyses */
const TOLERATED_IMBALANCE = 0.05;
/** Differences below this are within the reading of ordinary analyses [eq/m3]. */
const TOLERATED_SURPLUS = 0.1;

const ELECTRONEUTRALITY =
  'Appelo & Postma, Geochemistry, groundwater and pollution: electroneutrality of analyses';

const percent = (share: number) => `${(share * 100).toFixed(1)} %`;
const milli = (charge: number) => `${charge.toFixed(2)} meq/L`;

/** The alkalinity in words, and where it is written. */
function alkalinityText({ alkalinity, bicarbonate }: OwnWater): string {
  return alkalinity === undefined
    ? `bicarbonate ${((bicarbonate ?? 0) * 1000).toFixed(0)} mg/L`
    : `alkalinity ${milli(alkalinity)} (${convert(alkalinity, 'meq/L', '°dKH').toFixed(1)} °dKH)`;
}

function acidRemark(own: OwnWater, path: KeyPath): Remark[] {
  const { name, composition } = ownWater(own);
  const implied = alkalinityOf(composition);
  if (implied >= -TOLERATED_SURPLUS) return [];
  return [
    {
      severity: 'blocking',
      path,
      message: `the negative ions of ${name} outweigh the positive ones by ${milli(-implied)}: such a water would be a strong acid`,
      mend: 'Check the figures and their units (mg/L or mmol/L, as NO3 or as N); an ion may be missing.',
      source: ELECTRONEUTRALITY,
    },
  ];
}

/** More alkalinity than all positive ions could carry, whatever the anions. */
function overloadedRemark(own: OwnWater, path: KeyPath): Remark[] {
  const { name, composition, surplus, alkalinity = 0 } = ownWater(own);
  const { calcium, magnesium, sodium, potassium, ammonium } = composition;
  // What closing the charges added as sodium is not in the analysis.
  const carried = 2 * (calcium + magnesium) + sodium + potassium + ammonium - Math.max(0, -surplus);
  if (alkalinity <= carried + TOLERATED_SURPLUS || surplus >= 0) return [];
  const at = own.alkalinity === undefined ? 'bicarbonate' : 'alkalinity';
  return [
    {
      severity: 'blocking',
      path: [...path, at],
      value: alkalinityText(own),
      message: `the KH of ${name} is above what its ions allow: its positive ions carry ${milli(carried)}, the ${alkalinityText(own)} needs as much of them`,
      mend: 'Check the unit (°dKH, meq/L or mg/L of bicarbonate); calcium, magnesium or sodium may be missing or too low.',
      source: ELECTRONEUTRALITY,
    },
  ];
}

function chargeRemark(own: OwnWater, path: KeyPath): Remark[] {
  const { name, imbalance, surplus, alkalinity } = ownWater(own);
  if (alkalinity === undefined) return acidRemark(own, path);
  if (Math.abs(surplus) <= TOLERATED_SURPLUS || imbalance === 0) return [];
  const overloaded = overloadedRemark(own, path);
  if (overloaded.length > 0) return overloaded;
  const side =
    surplus > 0 ? 'positive ions outweigh the negative ones' : 'negative ions outweigh the positive ones';
  if (imbalance > TOLERATED_IMBALANCE)
    return [
      {
        severity: 'blocking',
        path,
        value: own.id,
        message: `the charges of ${name} do not add up: the ${side} by ${milli(Math.abs(surplus))}, ${percent(imbalance)} of all charges`,
        mend: 'More than 5 % cannot be. Check the figures and their units; an ion may be missing.',
        source: ELECTRONEUTRALITY,
      },
    ];
  return [
    {
      severity: 'note',
      path,
      message: `the charges of ${name} agree within ${percent(imbalance)}; the difference of ${milli(Math.abs(surplus))} is taken as ${surplus > 0 ? 'chloride' : 'sodium'}, so that the alkalinity is as measured`,
      mend: 'Nothing to do.',
      source: ELECTRONEUTRALITY,
    },
  ];
}

/** Figures of one analysis that say the same thing twice and differently. */
function contradictions(own: OwnWater, path: KeyPath): Remark[] {
  const { alkalinity, bicarbonate, hardness, calcium, magnesium } = own;
  const name = own.name ?? own.id;
  const found: Remark[] = [];
  const apart = (a: number, b: number, least: number) =>
    Math.abs(a - b) > Math.max(least, 0.1 * Math.max(a, b));
  if (alkalinity !== undefined && bicarbonate !== undefined) {
    const carried = (bicarbonate * 1000) / MOLAR_MASS.bicarbonate;
    if (apart(alkalinity, carried, 0.1))
      found.push({
        severity: 'blocking',
        path: [...path, 'bicarbonate'],
        value: `${(bicarbonate * 1000).toFixed(0)} mg/L`,
        message: `the bicarbonate of ${name} makes ${milli(carried)}, its alkalinity is ${milli(alkalinity)}`,
        mend: 'They say the same thing: keep the one that was measured.',
      });
  }
  const sum = (calcium ?? 0) + (magnesium ?? 0);
  const whole = calcium !== undefined && magnesium !== undefined;
  if (
    hardness !== undefined &&
    (whole ? apart(hardness, sum, 0.1) : sum > hardness + Math.max(0.1, 0.1 * hardness))
  )
    found.push({
      severity: 'blocking',
      path: [...path, 'hardness'],
      value: `${convert(hardness, 'mmol/L', '°dGH').toFixed(1)} °dGH`,
      message: `the hardness of ${name} is ${hardness.toFixed(2)} mmol/L, its calcium and magnesium make ${sum.toFixed(2)} mmol/L`,
      mend: 'GH is calcium plus magnesium: correct one of them, or leave the hardness out.',
    });
  return found;
}

/** Measured conductivity over the computed one beyond which an analysis is doubted. @source assumed: twice the error of the computation */
const TOLERATED_CONDUCTIVITY = 0.15;

function conductivityRemark(own: OwnWater, path: KeyPath): Remark[] {
  const { conductivity } = own;
  if (conductivity === undefined || conductivity < 20) return [];
  const { name, composition } = ownWater(own);
  const air = { carbonDioxide: 450, pressure: ATMOSPHERE };
  const computed = recipeWater(composition, { temperature: 25, air }).conductivity;
  if (Math.abs(computed / conductivity - 1) <= TOLERATED_CONDUCTIVITY) return [];
  return [
    {
      severity: 'warning',
      path: [...path, 'conductivity'],
      value: `${conductivity} µS/cm`,
      message: `${name} was measured at ${conductivity.toFixed(0)} µS/cm, and its ions conduct ${computed.toFixed(0)} µS/cm`,
      mend: 'Check the figures: an ion is wrong or missing, or the meter needs calibration or shows another unit.',
    },
  ];
}

function completenessRemark(own: OwnWater, path: KeyPath): Remark[] {
  if (own.calcium !== undefined || own.magnesium !== undefined) return [];
  if (knowsHardness(own) && statedAlkalinity(own) !== undefined) return [];
  return [
    {
      severity: 'blocking',
      path,
      message: `the water '${own.id}' says neither its ions nor both hardness and alkalinity`,
      mend: 'Give calcium, magnesium, sodium, potassium, chloride, sulfate and alkalinity; or hardness (GH) and alkalinity (KH).',
    },
  ];
}

function inferredRemark(own: OwnWater, path: KeyPath): Remark[] {
  return ownWater(own).assumed.map((message) => ({
    severity: 'note',
    path,
    message: message.replace(/\.$/, ''),
    mend: 'A full analysis of the supplier makes the outlook firmer.',
  }));
}

/** Everything about one water of the keeper's own. */
function ownWaterRemarks(own: OwnWater, path: KeyPath): Remark[] {
  const firm = [...completenessRemark(own, path), ...contradictions(own, path)];
  if (firm.length > 0) return firm;
  const charges = chargeRemark(own, path);
  if (charges.some(({ severity }) => severity === 'blocking')) return charges;
  return [...charges, ...inferredRemark(own, path), ...conductivityRemark(own, path)];
}

function blendRemark(blend: Blend, path: KeyPath): Remark[] {
  if (typeof blend === 'string') return [];
  const total = blend.reduce((sum, { share }) => sum + share, 0);
  const nothing = blend.flatMap(({ water, share }, index): Remark[] =>
    share > 0
      ? []
      : [
          {
            severity: 'blocking',
            path: [...path, index, 'share'],
            value: '0 %',
            message: `no volume of ${water} goes into the blend`,
            mend: 'Give it a share above 0 %, or take the part out.',
          },
        ],
  );
  if (nothing.length > 0 || Math.abs(total - 1) <= 0.005) return nothing;
  return [
    {
      severity: 'blocking',
      path,
      value: percent(total),
      message: `the shares of the blend add up to ${percent(total)}`,
      mend: 'Make them add up to 100 %.',
    },
  ];
}

/** Waters that cannot be, or are known only in part. */
export function waterRemarks({ waters = [], water }: Pick<EnclosureContent, 'waters' | 'water'>): Remark[] {
  return [
    ...waters.flatMap((own, index) => ownWaterRemarks(own, ['waters', index])),
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
