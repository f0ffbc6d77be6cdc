import { geometryOf, lampPlaceRemarks, type Plan, pumpReachRemarks } from '@shoreglass/engine';
import { PHOTONS_PER_JOULE } from '../plan/devices-of.ts';
import type { EnclosureContent } from '../schema/enclosure.ts';
import type { Remark } from './finding.ts';

/** Photons of 400 to 700 nm that one joule of the best red diodes can carry. @source memory: 4.1 to 4.4 umol/J on the market */
const MOST_PHOTONS_PER_JOULE = 4.5;
/** Light output no white lamp reaches [lm/W]. @source memory: efficacy of white radiation 300 to 330 lm/W */
const MOST_LUMENS_PER_WATT = 250;

function lampRemarks({ devices }: EnclosureContent): Remark[] {
  return (devices?.lamps ?? []).flatMap(({ power, photons, lumens, lit }, index): Remark[] => {
    const at = (key: string) => ['devices', 'lamps', index, key];
    const remarks: Remark[] = [];
    if (photons !== undefined && photons > power * MOST_PHOTONS_PER_JOULE)
      remarks.push({
        severity: 'warning',
        path: at('photons'),
        message: `${photons} µmol/s from ${power} W is more than any lamp gives`,
        mend: 'Check power and photons; photon flux density (µmol/m²/s) is another quantity.',
      });
    if (lumens !== undefined && lumens > power * MOST_LUMENS_PER_WATT)
      remarks.push({
        severity: 'warning',
        path: at('lumens'),
        message: `${lumens} lm from ${power} W is more than any white lamp gives`,
        mend: 'Check power and lumens.',
      });
    if (photons === undefined && lumens === undefined)
      remarks.push({
        severity: 'note',
        path: ['devices', 'lamps', index],
        message: `neither photons nor lumens are given; ${PHOTONS_PER_JOULE} µmol per joule are assumed`,
        mend: 'Take either from the maker’s sheet.',
      });
    if (lit > 14)
      remarks.push({
        severity: 'warning',
        path: at('lit'),
        message: `${lit} h of light a day feed algae more than plants`,
        mend: 'Ten to twelve hours are usual.',
        source: 'common practice, no source',
      });
    return remarks;
  });
}

/** Often enough for a filter, and a current small animals can still hold against. @source common practice */
const TURNOVERS = { slow: 0.5, fast: 12 } as const;

function pumpRemarks({ devices: { pump } }: Plan, litres: number): Remark[] {
  // One that cannot reach its outlet is told at the outlet.
  if (!pump || (pump.curve && pump.flow === 0)) return [];
  const turnover = (pump.flow * 3.6e6) / litres;
  const tell = (message: string, mend: string): Remark => ({
    severity: 'warning',
    path: ['devices', 'pump', 'flow'],
    message,
    mend,
    source: 'common practice, no source',
  });
  if (turnover > TURNOVERS.fast)
    return [
      tell(
        `the pump moves the ${litres.toFixed(0)} L of water ${turnover.toFixed(0)} times an hour`,
        'Choose a smaller pump, or throttle it; two to five times are usual.',
      ),
    ];
  if (turnover < TURNOVERS.slow)
    return [
      tell(
        `the pump moves the ${litres.toFixed(0)} L of water only ${turnover.toFixed(1)} times an hour`,
        'Two to five times are usual.',
      ),
    ];
  return [];
}

function heaterRemarks({ devices: { heater }, room }: Plan, litres: number): Remark[] {
  if (!heater) return [];
  const remarks: Remark[] = [];
  if (heater.power / litres > 2.5)
    remarks.push({
      severity: 'warning',
      path: ['devices', 'heater', 'power'],
      message: `${heater.power} W in ${litres.toFixed(0)} L would cook the water when the switch sticks`,
      mend: 'About half a watt to one watt per litre is enough in a room.',
      source: 'common practice, no source',
    });
  if (!room.series && heater.setpoint < room.temperature.mean - room.temperature.yearAmplitude)
    remarks.push({
      severity: 'note',
      path: ['devices', 'heater', 'setpoint'],
      message: `the heater keeps ${heater.setpoint} °C, and the room is never colder: it will not switch on`,
      mend: 'Leave it out, or set it higher.',
    });
  return remarks;
}

/** What a pump cannot reach and a lamp should not meet, at their places in the file. */
function placeRemarks(plan: Plan): Remark[] {
  return [...pumpReachRemarks(plan), ...lampPlaceRemarks(plan)].map(({ place, ...remark }) => ({
    ...remark,
    path: place.split('.').map((key) => (/^\d+$/.test(key) ? Number(key) : key)),
  }));
}

/** Equipment that gives more, or less, than it can or should. */
export function deviceRemarks(content: EnclosureContent, plan: Plan): Remark[] {
  const litres = geometryOf(plan).volumeAt(plan.water.level) * 1000;
  return [
    ...lampRemarks(content),
    ...pumpRemarks(plan, litres),
    ...heaterRemarks(plan, litres),
    ...placeRemarks(plan),
  ];
}
