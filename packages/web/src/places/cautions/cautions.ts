export interface Caution {
  readonly title: string;
  readonly sentences: readonly string[];
}

/**
 * What a computed year cannot take off the keeper. Common practice of the trade, no single source; local rules and the
 * instructions of the maker come first.
 */
export const CAUTIONS: readonly Caution[] = [
  {
    title: 'Nothing from the glass goes outdoors',
    sentences: [
      'Never release animals, plants, water or substrate into a garden, pond, stream or drain that leads to one. Even native species carry parasites and genes from elsewhere.',
      'Give surplus to other keepers. Freeze, boil or dry what must be thrown away before it goes into the bin.',
      'Some species are protected, regulated or listed as invasive where you live. Ask before you buy, collect, breed or post them.',
    ],
  },
  {
    title: 'Mains electricity beside water',
    sentences: [
      'Feed every device through a residual-current device (RCD, or GFCI) of 30 mA or less, and test it by its button each month.',
      'Let each cable hang in a loop below its socket, so that water drips off the lowest point and never runs into the plug.',
      'Use parts rated for damp places. Pull every plug before you put a hand into the water.',
      'Fixed wiring is work for a licensed electrician.',
    ],
  },
  {
    title: 'Weight',
    sentences: [
      'Water weighs 1 kg a litre, and glass, stone and wet ground come on top. Add up the full glass before you choose where it stands.',
      'Stand it level, on a base that carries the whole edge, across the joists and near a bearing wall. If in doubt ask someone who may judge the floor.',
      'Glass moves and cracks when it is carried full. Move it empty.',
    ],
  },
  {
    title: 'Cutting, glueing, curing',
    sentences: [
      'Cut foam, glass and wood with gloves and eye protection, and a dust mask where it dusts.',
      'Expanding foam and silicone give off fumes while they cure: keep the room aired and wait for the full curing time on the label, then rinse, before anything lives inside.',
      'Fill the bare glass and watch it for a day and a night before you plant it.',
    ],
  },
  {
    title: 'Lamps',
    sentences: [
      'Keep hot lamps away from covers, leaves and curtains, and out of reach of animals.',
      'Ultraviolet lamps harm eyes. Do not look into them, and keep the distance their maker states.',
    ],
  },
  {
    title: 'What comes from the wild, the shop and the hands',
    sentences: [
      'Wood, leaves, moss and animals from outdoors can bring pathogens, pesticides and passengers, and collecting them needs permission in many places. Quarantine and rinse what you bring in.',
      'Wash your hands after every touch, keep tools for the glass alone, and never start a siphon by mouth. Water and animals can carry germs that make people ill, above all children and people with weak defences.',
      'Some plants and some skins are poisonous. Keep them from children and pets, and wear gloves.',
    ],
  },
  {
    title: 'The animals come first',
    sentences: [
      'Numbers on a screen do not see a sick animal. When one stops feeding, gasps or loses its colour, act on what you see and ask a vet who knows its kind.',
      'Do not add an animal to solve a problem before you know what it will eat when the problem is gone.',
      'Change slowly: temperature, hardness and pH in small steps over days.',
    ],
  },
  {
    title: 'What the computed year is',
    sentences: [
      'A forecast from published equations and from values with spread, for one description of one glass. It can be wrong, and the list of what it leaves out stands below every outlook.',
      'A quantity inside its band is no promise. Measure, look, and trust the animals over the forecast.',
    ],
  },
];
