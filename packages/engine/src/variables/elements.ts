/**
 * What is balanced over a run. Each variable declares how much of each it holds per unit of itself.
 *
 * - carbon … copper: mol of the element; copper is a trace whose charge is left out.
 * - oxygen: oxygen equivalents [mol O2]: what the pool could give up (O2: +1) or would use when burnt to
 *   CO2, water and nitrate (organic carbon at the oxidation state of carbohydrate: -1 per mol C; ammonium and
 *   organic nitrogen: -2 per mol N; nitrite: -0.5). The oxygen demand of every process follows from it.
 * - charge: alkalinity [eq], the conservative charge-balance alkalinity with zero level CO2(aq), H2PO4-, NH4+,
 *   NO3-, SO4 2-: Alk = 2Ca + 2Mg + Na + K + NH4 - Cl - 2 SO4 - NO3 - NO2 - P. It is not a pool of its own: it
 *   follows from the ions, so that no process can book it inconsistently.
 * - water: m3 of liquid water.
 */
export const ELEMENTS = [
  'carbon',
  'nitrogen',
  'phosphorus',
  'oxygen',
  'calcium',
  'magnesium',
  'sodium',
  'potassium',
  'chloride',
  'sulfur',
  'copper',
  'charge',
  'water',
] as const;

export type ElementId = (typeof ELEMENTS)[number];
export type Content = Readonly<Partial<Record<ElementId, number>>>;
