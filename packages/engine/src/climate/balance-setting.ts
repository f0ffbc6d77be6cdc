import type { Heater, Pump } from '../plan/devices.ts';
import type { AirDevices } from './air-devices.ts';
import type { AirPaths } from './air-paths.ts';
import type { ClimateParameters } from './climate-parameters.ts';
import type { Envelope } from './envelope.ts';
import type { MoisturePools } from './moisture-pools.ts';
import type { RoomDrivers } from './room-drivers.ts';

/** What the balance works with all run. */
export interface BalanceSetting {
  readonly envelope: Envelope;
  readonly pools: MoisturePools;
  readonly parameters: ClimateParameters;
  readonly room: RoomDrivers;
  readonly heater: Heater | undefined;
  readonly pump: Pump | undefined;
  readonly paths: AirPaths;
  readonly air: AirDevices;
}
