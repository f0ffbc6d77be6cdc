import { TemperatureTable } from './temperature-table.ts';

/** The constants are the same in every run; the table fills as temperatures are met. */
export const CONSTANTS_TABLE = new TemperatureTable();
