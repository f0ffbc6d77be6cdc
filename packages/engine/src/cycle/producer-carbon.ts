import type { Setting } from '../process/contract.ts';
import { concentration, monod } from './concentration.ts';
import type { AnyProducerParameters, ProducerGroup, ProducerParameters } from './producer-group.ts';

/**
 * What tells the share of the highest growth [0..1] that the carbon at hand allows: C/(K_C + C), and for those that use
 * bicarbonate (C + a I/(K_b + I) HCO3) in place of C, at most all inorganic carbon; 1 where carbon comes from the air.
 * @param group which carbon it takes, and the share of it that uses bicarbonate
 * @param parameters half-saturation, worth of bicarbonate and the light its use takes
 * @param setting where the values stand
 * @throws RangeError when carbon comes from the water and its parameters are missing
 * @source monod-1949, jones-2005; `assumed`: bicarbonate counts as so much carbon dioxide
 */
export function carbonLimit<P extends ProducerParameters>(
  group: ProducerGroup<P>,
  parameters: AnyProducerParameters,
  setting: Setting,
): (values: Float64Array, water: number, photons: number) => number {
  const { carbon, id } = group;
  const { carbonHalf } = parameters;
  if (carbon === 'air') return () => 1;
  if (carbonHalf === undefined) throw new RangeError(`${id}: carbon from the water needs a half-saturation`);
  const inorganic = setting.index('dissolvedInorganicCarbon');
  if (carbon === undefined)
    return (values, water) => monod(concentration(values[inorganic]!, water), carbonHalf);
  const usable = setting.index(carbon);
  const bicarbonate = bicarbonateOf(group, parameters, setting);
  return (values, water, photons) => {
    const all = concentration(values[inorganic]!, water);
    const own = Math.min(values[usable]!, all);
    const alone = monod(own, carbonHalf);
    const { users, gain } = bicarbonate(values, photons);
    return users > 0 ? alone + users * (monod(Math.min(own + gain, all), carbonHalf) - alone) : alone;
  };
}

/** Those that use bicarbonate [1] and what it adds to the carbon they can use [mol/m3]. */
interface BicarbonateUse {
  users: number;
  gain: number;
}

/** Use of bicarbonate in a light; see `producer`. */
function bicarbonateOf<P extends ProducerParameters>(
  { bicarbonateUsers, id }: ProducerGroup<P>,
  { bicarbonateAffinity, bicarbonateLight }: AnyProducerParameters,
  setting: Setting,
): (values: Float64Array, photons: number) => BicarbonateUse {
  const use: BicarbonateUse = { users: 0, gain: 0 };
  if (bicarbonateUsers === undefined) return () => use;
  if (bicarbonateAffinity === undefined || bicarbonateLight === undefined)
    throw new RangeError(`${id}: use of bicarbonate needs its affinity and the light it takes`);
  const [share, bicarbonate] = [setting.index(bicarbonateUsers), setting.index('bicarbonate')];
  return (values, photons) => {
    use.users = values[share]!;
    if (use.users > 0)
      use.gain = bicarbonateAffinity * monod(photons, bicarbonateLight) * values[bicarbonate]!;
    return use;
  };
}
