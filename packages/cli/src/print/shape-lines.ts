import type { ClimateYear, CoverAnswer, CoverOption, FlowFigures, ShapeSheet } from '@shoreglass/engine';

/** A part of the sheet: heading, rows of a table, sentences below it. */
export interface SheetPart {
  readonly heading: string;
  readonly rows: readonly (readonly string[])[];
  /** Whether the first row names the columns. */
  readonly hasHead?: boolean;
  readonly sentences: readonly string[];
}

const litres = (volume: number): string => `${(volume * 1000).toFixed(volume < 0.01 ? 2 : 1)} L`;
const centimetres = (length: number): string => `${(length * 100).toFixed(1)} cm`;
const millilitres = (volume: number): string => (volume * 1e6).toFixed(0);
const squareCentimetres = (area: number): string => `${Math.round(area * 1e4)} cm²`;
const kilograms = (mass: number): string => `${mass.toFixed(mass < 10 ? 1 : 0)} kg`;
const megapascal = (stress: number): string => `${(stress / 1e6).toFixed(1)} MPa`;
const millimetres = (length: number): string => `${(length * 1000).toFixed(1)} mm`;
const perHour = (flow: number): string => `${(flow * 3.6e6).toFixed(0)} L/h`;
const percent = (share: number): string => `${(100 * share).toFixed(share < 0.0995 ? 1 : 0)} %`;
const days = (seconds: number): string => {
  const hours = seconds / 3600;
  return hours < 48 ? `${Math.round(hours)} h` : `${Math.round(hours / 24)} days`;
};

function waterPart({ geometry: g }: ShapeSheet): SheetPart {
  return {
    heading: 'Water and land',
    rows: [
      ['water', litres(g.waterVolume), `of it in the ground ${litres(g.poreVolume)}`],
      [
        'full to the lowest opening',
        litres(g.capacity),
        `${g.lowestOpening.name}, ${centimetres(g.lowestOpening.height)}`,
      ],
      ['freeboard', centimetres(g.freeboard)],
      ['water surface', squareCentimetres(g.surfaceArea)],
      ['land in plan', squareCentimetres(g.landArea), `margin ${squareCentimetres(g.marginArea)}`],
      ['upright walls above the water', squareCentimetres(g.wallArea)],
      [
        'surface under water',
        squareCentimetres(g.submergedArea),
        `with soaked layers ${g.filmArea.toFixed(1)} m²`,
      ],
      ['ground', litres(g.groundVolume), `drained soil ${litres(g.soilVolume)}`],
      ['displaced by wood and stone', litres(g.displaced)],
      ['shore', centimetres(g.escapes.shoreline), `climbable ${centimetres(g.escapes.climbable)}`],
    ],
    sentences: [
      g.escapes.hasWayOut
        ? `Ways out of the water: ${[...(g.escapes.climbable > 0 ? ['the shore'] : []), ...g.escapes.pieces].join(', ')}.`
        : 'No way out of the water.',
      ...(g.gaps.length > 0
        ? [
            `Ways out of the box: ${g.gaps.map(({ name, width }) => `${name}, up to ${millimetres(width)}`).join('; ')}.`,
          ]
        : ['No opening is drawn through which animals could leave; tell the slit of the cover (cover.gap).']),
      ...(g.field.convergence > 0
        ? [`From a height field; half as fine it differs by ${percent(g.field.convergence)}.`]
        : []),
    ],
  };
}

function zonePart({ zones, light }: ShapeSheet): SheetPart {
  const head = ['zone', 'area', 'water', 'depth', 'soil', 'drains', 'ground', 'light', 'day'];
  return {
    heading: 'Zones',
    hasHead: true,
    rows: [
      head,
      ...zones.map((zone, i) => [
        zone.name,
        squareCentimetres(zone.area),
        litres(zone.waterVolume),
        zone.greatestDepth > 0 ? centimetres(zone.greatestDepth) : '-',
        litres(zone.soilVolume),
        zone.drainHeight > 0 ? centimetres(zone.drainHeight) : '-',
        zone.drainage,
        `${(light.zones[i]?.mean ?? 0).toFixed(0)} µmol/m²/s`,
        `${(light.zones[i]?.daily ?? 0).toFixed(1)} mol/m²`,
      ]),
    ],
    sentences: [
      'drains: ground above the height to which its pores lift the water; light on the ground, or at the bottom.',
    ],
  };
}

function massPart({ masses }: ShapeSheet): SheetPart {
  return {
    heading: 'Weight',
    rows: [
      ...masses.parts.map(({ name, mass }) => [name, kilograms(mass)]),
      ['in all', kilograms(masses.total), `drained ${kilograms(masses.drained)}`],
      [
        'on the floor',
        `${(masses.floorPressure / 1000).toFixed(1)} kPa`,
        `on each long side of a stand ${(masses.standLineLoad / 1000).toFixed(2)} kN/m`,
      ],
    ],
    sentences: [
      masses.assumption,
      ...masses.uplift.map(
        ({ name, force }) => `${name} pushes upwards with ${force.toFixed(0)} N once under water: fix it.`,
      ),
    ],
  };
}

function glassPart({ structure }: ShapeSheet): SheetPart {
  const { silicone, foam } = structure;
  const head = ['pane', 'as planned', 'bend', 'full', 'bend', 'may be filled to'];
  return {
    heading: `Glass, ${millimetres(structure.thickness)}, ${structure.topEdge === 'free' ? 'rimless' : 'rimmed'}`,
    hasHead: true,
    rows: [
      head,
      ...structure.panes.map(({ pane, planned, full, fillTo, outside }) =>
        outside
          ? [pane, outside]
          : [
              pane,
              planned ? megapascal(planned.stress) : '-',
              planned ? millimetres(planned.deflection) : '-',
              full ? megapascal(full.stress) : '-',
              full ? millimetres(full.deflection) : '-',
              fillTo === undefined ? '-' : centimetres(fillTo),
            ],
      ),
    ],
    sentences: [
      ...structure.advice,
      `Silicone: ${silicone.jointLength.toFixed(1)} m of joints, ${silicone.cartridges === 1 ? 'one cartridge' : `${silicone.cartridges} cartridges`} of 310 mL; cures through in ${days(silicone.throughCure)} at least, filled after about ${days(silicone.beforeFilling)}.`,
      ...(foam
        ? [`Foam: ${litres(foam.volume)}, about ${foam.cans} cans of 750 mL; leave it ${days(foam.cure)}.`]
        : []),
    ],
  };
}

function flowPart({ flow }: ShapeSheet): SheetPart[] {
  if (!flow) return [];
  const row = (name: string, at: FlowFigures['clean']) => [
    name,
    perHour(at.flow),
    centimetres(at.head),
    centimetres(at.hoseLoss + at.fittingLoss),
    centimetres(at.filterLoss),
    at.turnover.toFixed(1),
  ];
  const { sheet, stop } = flow;
  return [
    {
      heading: 'Flow',
      hasHead: true,
      rows: [
        ['', 'flow', 'head', 'hose', 'filter', 'turnovers/h'],
        row('clean', flow.clean),
        row('half fouled', flow.halfFouled),
        row('fouled', flow.fouled),
      ],
      sentences: [
        `${percent(flow.filteredInHour)} of the water passes the filter within an hour.`,
        ...(sheet
          ? [
              `Over its lip ${((sheet.perWidth * 3.6e6) / 1000).toFixed(1)} L/h per mm, ${millimetres(sheet.depth)} deep, ${millimetres(sheet.thickness)} where it lands, ${centimetres(sheet.reach)} out: ${sheet.isClosed ? 'a closed sheet' : 'threads'}.`,
            ]
          : []),
        `When the pump stops ${litres(stop.drainBack)} come back: the level rises by ${millimetres(stop.rise)}, ${centimetres(stop.freeboardLeft)} stay to the lowest opening.`,
        `Splashed about: ${litres(flow.splash)} a day, in order of magnitude.`,
        flow.assumption,
      ],
    },
  ];
}

function lightPart({ light }: ShapeSheet): SheetPart {
  return {
    heading: 'Light',
    rows: [
      [
        'at the water',
        `${light.atWater.toFixed(0)} µmol/m²/s`,
        `${light.daily.toFixed(1)} mol/m² a day`,
        `${light.hours.toFixed(1)} h`,
      ],
      ...light.plants.map((plant) => [
        plant.name,
        `${plant.light.toFixed(0)} µmol/m²/s`,
        plant.least === undefined ? '' : `lasts from ${plant.least}, thrives from ${plant.good}`,
        plant.verdict,
      ]),
    ],
    sentences: [...light.algae.map(({ zone, why }) => `Algae will like ${zone}: ${why}.`), light.assumption],
  };
}

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** The year's climate, a row for each month. */
export function climatePart({ months, year, closure }: ClimateYear): SheetPart {
  const row = (name: string, m: ClimateYear['year']) => [
    name,
    m.air.mean.toFixed(1),
    `${m.water.mean.toFixed(1)}`,
    m.frontGlass.mean.toFixed(1),
    m.dewPoint.mean.toFixed(1),
    percent(m.humidity.mean),
    percent(m.dryDay),
    m.fog.toFixed(1),
    m.foggyDay.toFixed(1),
    m.topOff < 0 ? `gains ${millilitres(-m.topOff)}` : millilitres(m.topOff),
    percent(m.landWetness),
  ];
  return {
    heading: 'Climate through the year',
    hasHead: true,
    rows: [
      ['', 'air °C', 'water', 'front', 'dew pt', 'RH', 'dry day', 'fog h', 'worst', 'mL/day', 'land wet'],
      ...months.map((month) => row(MONTHS[month.month - 1] ?? '', month)),
      row('year', year),
    ],
    sentences: [
      'dry day: mean humidity of the driest day in twenty; fog on the front pane in hours a day, worst on the foggiest day in twenty; mL/day: top-off.',
      ...(year.topOff < 0
        ? [
            `Mist and fog bring more water than the box gives off: the pool rises by ${millilitres(-year.topOff)} mL a day. Take it out, spray less, open the cover further, or drill an overflow.`,
          ]
        : []),
      `Heat and water balance over the year to ${Math.max(Math.abs(closure.heat), Math.abs(closure.water)).toExponential(0)}.`,
    ],
  };
}

function optionRow(option: CoverOption): string[] {
  const { name, range, open, humidity, fog } = option;
  return [
    name,
    range ? `${percent(range.from)} to ${percent(range.to)}` : 'not both',
    percent(open),
    percent(humidity),
    `${fog.toFixed(1)} h`,
  ];
}

/** The answer to a wish for humidity and clear glass. */
export function coverPart({ asDrawn, alternatives, sentence }: CoverAnswer): SheetPart {
  return {
    heading: 'How far to open the cover',
    hasHead: true,
    rows: [['', 'open', 'tried at', 'humidity', 'fog'], optionRow(asDrawn), ...alternatives.map(optionRow)],
    sentences: [sentence],
  };
}

/** Everything a sheet says, part by part. */
export function sheetParts(sheet: ShapeSheet): SheetPart[] {
  return [
    waterPart(sheet),
    zonePart(sheet),
    massPart(sheet),
    glassPart(sheet),
    ...flowPart(sheet),
    lightPart(sheet),
  ];
}

const WEIGHTS = { blocking: 'blocks', warning: 'will probably go wrong', note: 'worth knowing' } as const;

/** What speaks against the plan, and what to mind. */
export function remarkParts({ remarks, cautions }: ShapeSheet): SheetPart[] {
  return [
    ...(remarks.length > 0
      ? [
          {
            heading: 'What to look at',
            rows: [],
            sentences: remarks.map(
              ({ severity, place, message, mend }) => `${WEIGHTS[severity]}, ${place}: ${message}. ${mend}`,
            ),
          },
        ]
      : []),
    {
      heading: 'Cautions',
      rows: [],
      sentences: cautions.map(({ place, message }) => `${place}: ${message}`),
    },
  ];
}
