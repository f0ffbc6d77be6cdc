import { z } from 'zod';

const numbers = z.array(z.number()).readonly();
const maybe = z.exactOptional;
const number = (meaning: string) => z.number().describe(meaning);
const share = (meaning: string) => z.number().min(0).max(1).describe(meaning);

export const remarkSchema = z
  .strictObject({
    severity: z.enum(['blocking', 'warning', 'note']),
    place: z.string(),
    message: z.string(),
    mend: z.string(),
    source: maybe(z.string()),
  })
  .describe('What speaks against the plan: place, what is wrong, mend.');

const field = z
  .strictObject({
    columns: z.int(),
    rows: z.int(),
    cellLength: number('Along x [m].'),
    cellWidth: number('Along y [m].'),
    ground: numbers.describe('Height of the ground in each cell [m], row by row from the front pane.'),
    zone: numbers.describe('Position of its zone in the file, -1 for bare base.'),
    convergence: number('Water volume against that of a field half as fine, relative.'),
  })
  .describe('Height field of the ground in plan.');

const geometry = z.strictObject({
  level: number('[m above the inner base]'),
  waterVolume: number('All liquid [m3].'),
  openVolume: number('Above the ground [m3].'),
  poreVolume: number('In the pores of the ground below the level [m3].'),
  capacity: number('Full to the lowest opening [m3].'),
  surfaceArea: number('Free water surface [m2].'),
  landArea: number('In plan [m2].'),
  wallArea: number('Upright faces of ground above the water [m2].'),
  marginArea: number('Ground from 3 cm below to 5 cm above the water, in plan [m2].'),
  submergedArea: number('Under water [m2].'),
  filmArea: number('Under water, with the inside of soaked layers [m2].'),
  groundVolume: number('All ground [m3].'),
  soilVolume: number('Substrate and litter layers above the water [m3].'),
  displaced: number('Hardscape under water [m3].'),
  airVolume: number('[m3]'),
  lowestOpening: z.strictObject({ name: z.string(), height: number('[m]') }),
  freeboard: number('Lowest opening less level [m].'),
  curve: z.strictObject({ levels: numbers, volumes: numbers, areas: numbers }).describe('[m, m3, m2]'),
  field,
  escapes: z
    .strictObject({
      shoreline: number('[m]'),
      climbable: number('Of it, ground of at most 45 degrees or a low ledge [m].'),
      pieces: z.array(z.string()).readonly(),
      hasWayOut: z.boolean(),
    })
    .describe('Ways out of the water.'),
  gaps: z
    .array(z.strictObject({ place: z.string(), name: z.string(), width: number('[m]') }))
    .readonly()
    .describe('Openings through which animals may leave, widest first.'),
});

const zone = z.strictObject({
  id: z.string(),
  name: z.string(),
  kind: z.string(),
  area: number('In plan [m2].'),
  waterArea: number('[m2]'),
  lowest: number('Ground [m].'),
  highest: number('Ground [m].'),
  steepest: number('[m/m]'),
  waterVolume: number('Above the ground [m3].'),
  meanDepth: number('[m]'),
  greatestDepth: number('[m]'),
  soilVolume: number('[m3]'),
  wetFront: number('Height to which its pores lift the water [m].'),
  drainHeight: number('Ground above that, which drains freely [m].'),
  drainage: z.enum(['under water', 'soggy', 'moist', 'drains']),
});

const masses = z.strictObject({
  parts: z.array(z.strictObject({ name: z.string(), mass: number('[kg]') })).readonly(),
  total: number('[kg]'),
  drained: number('Without water [kg].'),
  floorPressure: number('On the outer footprint [Pa].'),
  standLineLoad: number('On each long side of a stand [N/m].'),
  uplift: z.array(z.strictObject({ name: z.string(), force: number('[N]'), place: z.string() })).readonly(),
  assumption: z.string(),
});

const paneCase = z.strictObject({
  depth: number('Of water or ground [m].'),
  stress: number('[Pa]'),
  deflection: number('[m]'),
  factor: number('Lasting strength over stress.'),
});

const structure = z.strictObject({
  topEdge: z.enum(['free', 'braced']),
  thickness: number('[m]'),
  allowedStress: number('[Pa]'),
  panes: z
    .array(
      z.strictObject({
        pane: z.enum(['front', 'back', 'left', 'right']),
        length: number('[m]'),
        height: number('[m]'),
        planned: maybe(paneCase),
        full: maybe(paneCase),
        otherEdge: maybe(paneCase),
        fillTo: maybe(number('Greatest depth at the allowed stress [m].')),
        least: maybe(number('Least thickness when full [m].')),
        stock: maybe(number('Next stock thickness [m].')),
        outside: maybe(z.string()),
      }),
    )
    .readonly(),
  advice: z.array(z.string()).readonly(),
  silicone: z.strictObject({
    jointLength: number('[m]'),
    area: number('[m2]'),
    volume: number('[m3]'),
    cartridges: z.int(),
    throughCure: number('[s]'),
    beforeFilling: number('[s]'),
  }),
  foam: maybe(z.strictObject({ volume: number('[m3]'), cans: z.int(), cure: number('[s]') })),
});

const operating = z.strictObject({
  flow: number('[m3/s]'),
  head: number('[m]'),
  lift: number('[m]'),
  hoseLoss: number('[m]'),
  fittingLoss: number('[m]'),
  filterLoss: number('[m]'),
  turnover: number('Of all water, in an hour.'),
});

const flow = z.strictObject({
  clean: operating,
  halfFouled: operating,
  fouled: operating,
  curve: maybe(z.strictObject({ flows: numbers, pump: numbers, clean: numbers, fouled: numbers })),
  filteredInHour: share('Of the water that has passed the filter once.'),
  hoseSpeed: maybe(number('[m/s]')),
  bedSpeed: maybe(number('[m/s]')),
  sheet: maybe(
    z.strictObject({
      perWidth: number('[m2/s]'),
      depth: number('On the lip [m].'),
      thickness: number('Where it lands [m].'),
      reach: number('From the lip [m].'),
      isClosed: z.boolean(),
    }),
  ),
  splash: number('[m3/day], order of magnitude.'),
  stop: z.strictObject({
    drainBack: number('[m3]'),
    rise: number('[m]'),
    freeboardLeft: number('[m]'),
  }),
  assumption: z.string(),
});

const light = z.strictObject({
  atWater: number('[umol/(m2 s)]'),
  daily: number('[mol/(m2 day)]'),
  hours: number('[h]'),
  attenuation: number('[1/m]'),
  zones: z
    .array(
      z.strictObject({
        zone: z.string(),
        name: z.string(),
        lowest: z.number(),
        mean: z.number(),
        highest: z.number(),
        daily: z.number(),
      }),
    )
    .readonly(),
  depths: numbers.describe('[m]'),
  byDepth: numbers.describe('[umol/(m2 s)]'),
  plants: z
    .array(
      z.strictObject({
        planting: z.string(),
        name: z.string(),
        zone: z.string(),
        light: z.number(),
        daily: z.number(),
        least: maybe(z.number()),
        good: maybe(z.number()),
        verdict: z.enum(['too dark', 'lasts', 'thrives', 'not known']),
      }),
    )
    .readonly(),
  algae: z.array(z.strictObject({ zone: z.string(), light: z.number(), why: z.string() })).readonly(),
  assumption: z.string(),
});

export const sheetSchema = z
  .strictObject({
    geometry,
    zones: z.array(zone).readonly(),
    masses,
    structure,
    flow: maybe(flow),
    light,
    remarks: z.array(remarkSchema).readonly(),
    cautions: z.array(z.strictObject({ place: z.string(), message: z.string() })).readonly(),
  })
  .describe('Volumes, masses, glass, flow and light of a plan, in SI units.');
