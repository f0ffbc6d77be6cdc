import type { Layer, Zone } from '@shoreglass/engine';
import type { SectionPlan } from '../section/section-plan.ts';

/** An invented enclosure for previews and tests; no such glass stands anywhere. */

const layer = (kind: Layer['kind'], name: string, thickness: number, porosity = 0.4): Layer => ({
  kind,
  material: name,
  name,
  thickness,
  porosity,
  filmSurface: 800,
});

const zones: Zone[] = [
  {
    id: 'pool',
    name: 'pool',
    kind: 'pool',
    from: 0,
    to: 0.35,
    groundStart: 0.022,
    groundEnd: 0.028,
    layers: [layer('substrate', 'fine sand', 0.022)],
  },
  {
    id: 'margin',
    name: 'margin',
    kind: 'margin',
    from: 0.35,
    to: 0.46,
    groundStart: 0.04,
    groundEnd: 0.17,
    layers: [layer('substrate', 'gravel', 0.04), layer('substrate', 'fine sand', 0.1)],
  },
  {
    id: 'bank',
    name: 'bank',
    kind: 'bank',
    from: 0.46,
    to: 0.9,
    groundStart: 0.19,
    groundEnd: 0.38,
    layers: [
      layer('false bottom', 'false bottom', 0.06, 0.95),
      layer('mesh', 'mesh', 0.004, 0.9),
      layer('drainage', 'expanded clay', 0.035),
      layer('substrate', 'woodland soil', 0.1, 0.5),
    ],
  },
];

export const ALDER_CORNER: SectionPlan = {
  id: 'alder-corner',
  name: 'Alder corner',
  box: {
    length: 0.9,
    width: 0.45,
    height: 0.6,
    glassThickness: 0.006,
    coverOpenFraction: 0.18,
    coverTransmission: 0.9,
  },
  zones,
  water: { level: 0.138 },
  devices: {
    lamps: [{ name: 'lamp', power: 28, photonFlux: 60, onAt: 8, hours: 11 }],
    pump: { name: 'pump', power: 5, flow: 8e-5, fallHeight: 0.1, filmSurface: 1.5 },
    mister: { name: 'mister', dailyMass: 0.12, at: [8, 19] },
  },
  hardscape: [
    wood('trunk', [
      [0.2, 0.012, 0.05],
      [0.29, 0.095, 0.052],
      [0.38, 0.2, 0.046],
      [0.46, 0.245, 0.036],
      [0.58, 0.3, 0.026],
      [0.7, 0.365, 0.012],
    ]),
    wood('left fork', [
      [0.385, 0.19, 0.036],
      [0.415, 0.26, 0.026],
      [0.4, 0.34, 0.018],
      [0.345, 0.41, 0.009],
    ]),
    wood('right fork', [
      [0.46, 0.24, 0.032],
      [0.5, 0.32, 0.026],
      [0.515, 0.4, 0.02],
      [0.565, 0.485, 0.009],
    ]),
    {
      id: 'cobble',
      name: 'cobble',
      kind: 'stone',
      material: 'granite',
      mass: 1.1,
      volume: 4e-4,
      course: [
        [0.3, 0.045, 0.03],
        [0.33, 0.05, 0.045],
        [0.365, 0.055, 0.03],
      ],
      contents: {},
    },
    {
      id: 'shell',
      name: 'crushed oyster shell',
      kind: 'carbonate',
      material: 'oyster shell',
      mass: 0.03,
      volume: 1.5e-5,
      course: [],
      contents: { carbonateSolid: 0.3 },
      grain: 0.004,
    },
    {
      id: 'leaves',
      name: 'alder leaves',
      kind: 'litter',
      material: 'alder leaves',
      mass: 0.02,
      volume: 4e-5,
      course: [],
      contents: { litterCarbon: 0.7 },
    },
  ],
  plants: [
    { id: 'hornwort', name: 'hornwort', group: 'submerged', zone: 'pool', cover: 0.35, fullCoverBiomass: 12 },
    { id: 'sedge', name: 'sedge', group: 'emersed', zone: 'margin', cover: 0.4, fullCoverBiomass: 10 },
    { id: 'moss', name: 'moss', group: 'moss', zone: 'bank', cover: 0.71, fullCoverBiomass: 8 },
    { id: 'fern', name: 'ferns', group: 'land', zone: 'bank', cover: 0.4, fullCoverBiomass: 14 },
  ],
  populations: [
    { id: 'amphipods', species: 'Gammarus pulex', name: 'amphipods', zone: 'pool' },
    { id: 'ramshorns', species: 'Planorbarius corneus', name: 'ramshorn snails', zone: 'pool' },
    { id: 'woodlice', species: 'Trichoniscus pusillus', name: 'woodlice', zone: 'bank' },
    { id: 'springtails', species: 'Folsomia candida', name: 'springtails', zone: 'bank' },
  ],
};

function wood(
  id: string,
  course: readonly (readonly [number, number, number])[],
): SectionPlan['hardscape'][number] {
  return {
    id,
    name: 'alder wood',
    kind: 'wood',
    material: 'alder',
    mass: 0.6,
    volume: 9e-4,
    course,
    contents: {},
  };
}
