/** What animals feel when the water is changed. */
export type ChangeQuantity = 'pH' | 'KH' | 'conductivity' | 'waterTemperature';

/** The fastest change of the water that somebody who lives in it is to be put through. */
export interface ChangeLimit {
  readonly quantity: ChangeQuantity;
  /** Most in a day: pH units; °dKH; share of the conductivity before the change; K. */
  readonly perDay: number;
  readonly owner: string;
  readonly basis: string;
  readonly source: string;
}
