import type { ShelfWater } from '@shoreglass/contract';
import type { AheadDocument, Plan, WaterComposition } from '@shoreglass/engine';
import { dateLabel, MONTHS } from '@shoreglass/figures';
import { useEffect, useId, useState } from 'react';
import { analyse } from '../../../engine-client.ts';
import { useChosenDay, useRestedDay } from '../../../outlook/chosen-day.ts';
import { dayOfRun } from '../../../outlook/today.ts';
import desk from '../../sheets/desk.module.css';
import { localDate, type ReadingEntry, useReadings } from '../readings/readings-store.ts';

/** Where it is known from what is in the pool now. */
export type PoolSource = 'fill' | 'computed' | 'read';

/** The part of a recipe's volume that stays in the enclosure [m³], of how much, and from where its water is known. */
export interface Stays {
  readonly volume: number;
  readonly of: number;
  readonly source: PoolSource;
}

export interface PoolNow {
  readonly source: PoolSource;
  /** As it is called in a list; of a reading not yet made, that there is none. */
  readonly said: string;
  readonly known: boolean;
  /** [°dGH, °dKH]; of the fill every ion is known instead. */
  readonly hardness?: { readonly GH: number; readonly KH: number };
}

/** What the pool may be taken to hold: its fill, the runs' median of the chosen day, the last reading of GH and KH. */
export function usePoolNow(id: string, document: AheadDocument | undefined): readonly PoolNow[] {
  const latest = useReadings(id).find(({ values: { GH, KH } }) => GH !== undefined && KH !== undefined);
  const [isChosen, rested] = [useChosenDay(({ of }) => of === id), useRestedDay()];
  const today = document && dayOfRun(document.enclosure.startDate, document.run.days, new Date());
  return [
    { source: 'fill', said: 'the water it was filled with', known: true },
    computedOn(document, isChosen ? rested : (today ?? 0)),
    readOn(latest),
  ];
}

function computedOn(document: AheadDocument | undefined, day: number): PoolNow {
  const at = Math.min(Math.max(0, day), (document?.run.days ?? 1) - 1);
  const [GH, KH] = [document?.series.GH?.q50[at], document?.series.KH?.q50[at]];
  if (!document || GH === undefined || KH === undefined)
    return { source: 'computed', said: 'as computed (the runs are not in yet)', known: false };
  const said = `as computed for ${dateLabel(document.enclosure.startDate, at)}`;
  return { source: 'computed', said, known: true, hardness: { GH, KH } };
}

function readOn(entry: ReadingEntry | undefined): PoolNow {
  const { GH, KH } = entry?.values ?? {};
  if (!entry || GH === undefined || KH === undefined)
    return { source: 'read', said: 'GH and KH as read (none yet)', known: false };
  const date = localDate(entry.on);
  const said = `GH and KH of ${date.getDate()} ${MONTHS[date.getMonth()]}`;
  return { source: 'read', said, known: true, hardness: { GH, KH } };
}

interface PoolNowChoiceProps {
  readonly pools: readonly PoolNow[];
  readonly value: PoolSource;
  readonly onChange: (source: PoolSource) => void;
}

export function PoolNowChoice({ pools, value, onChange }: PoolNowChoiceProps) {
  const field = useId();
  return (
    <>
      <label htmlFor={field}>What is in it now</label>
      <select
        id={field}
        className={desk.select}
        value={value}
        onChange={({ target }) => onChange(target.value as PoolSource)}
      >
        {pools.map(({ source, said, known }) => (
          <option key={source} value={source} disabled={!known}>
            {said}
          </option>
        ))}
      </select>
    </>
  );
}

/** Water of the pool as a source of a recipe: of the fill by its ions, else by hardness, its other ions inferred. */
export type PoolWater = Pick<ShelfWater, 'name' | 'composition'>;

export function usePoolWater(pool: PoolNow | undefined, plan: Plan | undefined): PoolWater | undefined {
  const [inferred, setInferred] = useState<PoolWater>();
  const { GH, KH } = pool?.hardness ?? {};
  useEffect(() => {
    let current = true;
    setInferred(undefined);
    if (GH === undefined || KH === undefined) return;
    analyse({ id: 'pool', hardness: `${GH} °dGH`, alkalinity: `${KH} °dKH` }).then(({ water }) => {
      if (current && water) setInferred({ name: 'water of the pool', composition: water.composition });
    });
    return () => {
      current = false;
    };
  }, [GH, KH]);
  if (!pool || !plan) return undefined;
  const fill: WaterComposition = plan.water.fill;
  return pool.source === 'fill' ? { name: 'water of the pool', composition: fill } : inferred;
}
