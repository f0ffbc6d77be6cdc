import type { Organism, Quantity } from '@shoreglass/library';

/** Founders of a trial and the text of the enclosure they live in. */
export interface TrialBox {
  readonly text: string;
  readonly founders: number;
}

/** Inside lengths over those of a box of 90 x 45 x 60 cm, tried in this order. */
const SCALES = [0.4, 0.7, 1, 1.5, 2.2, 3] as const;
/** Land and water of that box: [cm2] of bank and margin, [L] of pool. */
const LAND = 1900;
const WATER = 34;
/** Dry feed a day over the wet mass of the founders: ample for small animals, a little fouls little. @source common practice */
const DAILY_FEED = 0.06;
/** Least feed a day on that box's floor [g]: about 0.9 g/m2. @source common practice */
const LEAST_FEED = 0.35;
const MOST_FOUNDERS = 40;
const USUAL_FOUNDERS = 8;

const middle = (span: { low?: Quantity | undefined; high?: Quantity | undefined } | undefined) => {
  if (!span) return undefined;
  const { low, high } = span;
  return low && high ? (low.value + high.value) / 2 : undefined;
};

function temperatureOf({ lifeHistory, traits, tolerances, survives, habitat }: Organism): number {
  const series = habitat === 'land' ? 'airTemperature' : 'waterTemperature';
  const wanted = lifeHistory?.temperature.value ?? traits?.referenceTemperature?.value;
  const best = middle(tolerances?.[series]) ?? middle(survives?.[series]);
  if (wanted === undefined) return best ?? 22;
  const { low, high } = tolerances?.[series] ?? survives?.[series] ?? {};
  return Math.min(high ? high.value - 1 : wanted, Math.max(low ? low.value + 1 : wanted, wanted));
}

/** Mineral content within what the species is fine in; a usual one where the file says nothing. */
function waterOf({ tolerances, survives }: Organism): { hardness: number; alkalinity: number } {
  const hardness = middle(tolerances?.GH) ?? middle(survives?.GH) ?? 10;
  const acidity = middle(tolerances?.pH) ?? middle(survives?.pH) ?? 7.5;
  // In balance with the air of a room, 0.5 °dKH gives about pH 7.3, 1 gives 7.6, 2 gives 7.9 and 5 gives 8.2.
  const byAcidity = acidity < 6.7 ? 0.3 : acidity < 7.1 ? 0.5 : acidity < 7.4 ? 1 : acidity < 7.7 ? 2 : 5;
  const alkalinity = Math.min(middle(tolerances?.KH) ?? byAcidity, byAcidity, hardness);
  return { hardness, alkalinity: Math.max(0.3, alkalinity) };
}

const adultMassOf = ({ lifeHistory, traits }: Organism): number => {
  if (lifeHistory) return lifeHistory.adultMass.value;
  const length = traits?.lengthAtEnd?.value ?? 10;
  return 4 * (traits?.dryMassPerCube?.value ?? 0.006) * length * length * length;
};

/** Adults that fit twice into a box: by the ground they claim and by half a gram wet a litre. */
function roomFor(organism: Organism, scale: number): number {
  const claimed = organism.space?.groundPerAdult?.value ?? 0;
  const ground = claimed > 0 ? (LAND * scale * scale) / claimed : Number.POSITIVE_INFINITY;
  if (organism.habitat === 'land') return ground / 2;
  const water = (WATER * scale * scale * scale * 500) / adultMassOf(organism);
  return Math.min(ground, organism.habitat === 'water' ? water : 2 * water) / 2;
}

const cm = (length: number): string => `${Math.round(length * 10) / 10} cm`;

/**
 * An invented enclosure that suits one species: half land, half water, at the temperature its file was written for,
 * in water it is fine in, fed well. Small boxes for small animals, larger ones for those that claim more room.
 */
export function trialBox(organism: Organism): TrialBox {
  const least = Math.min(MOST_FOUNDERS, Math.max(2, organism.leastFounders.value));
  const scale = SCALES.find((each) => roomFor(organism, each) >= least) ?? 3;
  const founders = Math.max(least, Math.min(USUAL_FOUNDERS, Math.floor(roomFor(organism, scale))));
  const { hardness, alkalinity } = waterOf(organism);
  const temperature = temperatureOf(organism);
  const feed = Math.max(LEAST_FEED * scale * scale, (DAILY_FEED * founders * adultMassOf(organism)) / 1000);
  const onLand = organism.habitat === 'land' ? 1 : organism.habitat === 'water' ? 0 : 0.6;
  const feeding = (part: number, place: string) =>
    part > 0
      ? `\n  - { do: feed, feed: ${place === 'land' ? 'dried-insects' : 'flake'}, amount: ${(part * feed).toFixed(3)} g, every: 1 d, place: ${place} }`
      : '';
  const at = (length: number) => cm(length * scale);
  const text = `shoreglass: 1
name: Trial of ${organism.name.replaceAll(/[^\w -]/g, '')}
about: An invented box for a trial of one species.
start: 2026-03-01
glass: { length: ${at(90)}, width: ${at(45)}, height: ${at(60)}, thickness: ${scale > 2 ? 15 : scale < 1 ? 5 : 10} mm }
cover: { open: 0 %, transmission: 90 % }
zones:
  - { id: pool, kind: pool, from: 0 cm, to: ${at(44)}, ground: { left: ${at(3)}, right: ${at(5)} }, layers: [{ kind: substrate, material: coarse-sand }] }
  - { id: margin, kind: margin, from: ${at(44)}, to: ${at(57)}, ground: { left: ${at(5)}, right: ${at(20)} }, layers: [{ kind: substrate, material: fine-gravel }] }
  - { id: bank, kind: bank, from: ${at(57)}, to: ${at(90)}, ground: { left: ${at(22)}, right: ${at(26)} }, layers: [{ kind: false bottom, material: false-bottom, thickness: ${at(8)} }, { kind: drainage, material: expanded-clay, thickness: ${at(9)} }, { kind: mesh, material: screen-mesh, thickness: 1 mm }, { kind: substrate, material: forest-soil }] }
waters:
  - { id: mixed, name: Water that suits it, source: invented, hardness: ${hardness.toFixed(2)} °dGH, alkalinity: ${alkalinity.toFixed(2)} °dKH }
water: { level: ${at(16.5)}, fill: [{ water: mixed, share: 100 % }], top-off: distilled }
settled: { filter: matured, handles: ${Math.max(20, Math.round(feed * 120))} mg, algae: 5 g/m², detritus: ${(4 * scale * scale).toFixed(2)} g }
room: { temperature: { mean: ${temperature.toFixed(1)} °C, season: 0 K, day: 0 K, peak: 07-25 }, humidity: { mean: 65 %, season: 0 %, day: 0 %, peak: 07-25 }, carbon-dioxide: 500 ppm }
devices:
  lamps: [{ name: Lamp, power: ${Math.ceil(18 * scale * scale)} W, lumens: ${Math.round(2400 * scale * scale)} lm, on: 09:00, lit: 10 h }]
  pump: { name: Pump, power: ${Math.max(1, Math.round(3 * scale))} W, flow: ${Math.round(250 * scale * scale * scale)} L/h, fall: ${at(6)}, films: ${(0.6 * scale * scale).toFixed(1)} m² }
plants:
  - { plant: ceratophyllum-demersum, zone: pool, cover: 25 % }
animals:
  - { species: ${organism.id}, zone: ${organism.habitat === 'land' ? 'bank' : organism.habitat === 'water' ? 'pool' : 'margin'}, adults: ${founders} }
routines:
  - { do: top-off, every: 2 d }
  - { do: water-change, share: 50 %, water: mixed, every: 1 d }${feeding(1 - onLand, 'water')}${feeding(onLand, 'land')}
actions:
  - { do: add-litter, material: oak-litter, mass: ${Math.round(60 * scale * scale)} g, place: land, after: 0 d }
  - { do: add-litter, material: oak-litter, mass: ${Math.round(8 * scale * scale)} g, after: 0 d }
`;
  return { text, founders };
}
