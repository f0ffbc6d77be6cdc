/** What stands in the way of a sound section: where in the plan, what is wrong, and how to mend it. */
export interface GeometryProblem {
  /** Place in the plan, such as `zones.bank.to`. */
  readonly place: string;
  readonly message: string;
  readonly mend: string;
  /** A plan with a blocking problem cannot stand; blocking when left out. */
  readonly severity?: 'blocking' | 'warning';
}

/** Lengths closer than this are taken as equal [m]: a tenth of a millimetre. */
export const TOLERANCE = 1e-4;
/** A length written in centimetres for people, to a tenth of a millimetre. */
export function centimetres(length: number): string {
  return `${Math.round(length * 1e4) / 100} cm`;
}
