import type { LibraryListed, LibraryListing } from '@shoreglass/contract';
import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import type { SoundLife } from '../../../worker/life-orders.ts';
import desk from '../../sheets/desk.module.css';
import type { AnimalRow, Draft, PlantRow } from './draft.ts';
import styles from './resident-list.module.css';

interface ResidentListProps {
  readonly draft: Draft;
  readonly zones: SoundLife['zones'];
  readonly library: LibraryListing;
  readonly onChange: (draft: Draft) => void;
}

/** Everybody of the draft, each with the place, the number and the day it comes. */
export function ResidentList({ draft, zones, library, onChange }: ResidentListProps) {
  const replaced = <Row,>(rows: readonly Row[], at: number, row: Row | undefined): Row[] =>
    rows.flatMap((each, position) => (position === at ? (row === undefined ? [] : [row]) : [each]));
  return (
    <section aria-labelledby="residents" className={desk.block}>
      <h2 id="residents">In this enclosure</h2>
      {draft.animals.length + draft.plants.length === 0 && (
        <p className={desk.soft}>Nobody yet. Look below for whom you would like to keep.</p>
      )}
      <ul className={styles.list}>
        {draft.animals.map((row, at) => (
          <Animal
            key={row.at ?? `new ${row.species} ${at}`}
            row={row}
            zones={zones}
            entry={library.animals.find(({ id }) => id === row.species)}
            onChange={(next) => onChange({ ...draft, animals: replaced(draft.animals, at, next) })}
          />
        ))}
        {draft.plants.map((row, at) => (
          <Plant
            key={`plant ${row.at ?? `new ${row.plant} ${at}`}`}
            row={row}
            zones={zones}
            entry={library.plants.find(({ id }) => id === row.plant)}
            onChange={(next) => onChange({ ...draft, plants: replaced(draft.plants, at, next) })}
          />
        ))}
      </ul>
    </section>
  );
}

interface RowProps<Row> {
  readonly row: Row;
  readonly zones: SoundLife['zones'];
  readonly entry: LibraryListed | undefined;
  readonly onChange: (row: Row | undefined) => void;
}

function Animal({ row, zones, entry, onChange }: RowProps<AnimalRow>) {
  return (
    <Resident
      kind="organisms"
      id={row.species}
      row={row}
      entry={entry}
      words={animalWords(row, zones)}
      onTakeOut={() => onChange(undefined)}
    >
      <Zone name={row.name} zones={zones} value={row.zone} choose={(zone) => onChange({ ...row, zone })} />
      <NumberField
        label="Adults"
        of={row.name}
        value={row.adults}
        write={(adults) => onChange({ ...row, adults })}
      />
      <NumberField
        label="Young"
        of={row.name}
        value={row.juveniles}
        write={(juveniles) => onChange({ ...row, juveniles })}
      />
      <NumberField
        label="After, days"
        of={row.name}
        value={row.after}
        write={(after) => onChange({ ...row, after })}
      />
      <NumberField
        label="Chance, %"
        of={row.name}
        value={row.chance}
        placeholder="surely"
        write={(chance) => onChange({ ...row, chance })}
      />
    </Resident>
  );
}

function Plant({ row, zones, entry, onChange }: RowProps<PlantRow>) {
  return (
    <Resident
      kind="plants"
      id={row.plant}
      row={row}
      entry={entry}
      words={`${zoneName(zones, row.zone)}: ${row.cover || '…'}\u00a0% covered${row.fragments ? ', sprinkled on as fragments' : ''}${chanceWords(row.chance)}`}
      onTakeOut={() => onChange(undefined)}
    >
      <Zone name={row.name} zones={zones} value={row.zone} choose={(zone) => onChange({ ...row, zone })} />
      <NumberField
        label="Cover, %"
        of={row.name}
        value={row.cover}
        write={(cover) => onChange({ ...row, cover })}
      />
      <label className={styles.wide}>
        <span>Set as</span>
        <select
          className={desk.select}
          aria-label={`Set as, ${row.name}`}
          value={row.fragments ? 'fragments' : 'plants'}
          onChange={({ target }) => onChange({ ...row, fragments: target.value === 'fragments' })}
        >
          <option value="plants">plants or mats</option>
          <option value="fragments">fragments sprinkled on</option>
        </select>
      </label>
      <NumberField
        label="Chance, %"
        of={row.name}
        value={row.chance}
        placeholder="surely"
        write={(chance) => onChange({ ...row, chance })}
      />
    </Resident>
  );
}

function zoneName(zones: SoundLife['zones'], id: string): string {
  const zone = zones.find((each) => each.id === id);
  return zone?.name ?? id;
}

/** Guests that may come along by accident. */
function chanceWords(chance: string): string {
  return chance === '' ? '' : `, by accident in ${chance}\u00a0% of the runs`;
}

/** "Pool: 16 adults and 20 young, from day 28". */
function animalWords(
  { adults, juveniles, zone, after, chance }: AnimalRow,
  zones: SoundLife['zones'],
): string {
  const counts = [
    Number(adults) === 0 ? '' : `${adults} ${Number(adults) === 1 ? 'adult' : 'adults'}`,
    Number(juveniles) === 0 ? '' : `${juveniles} young`,
  ].filter((part) => part !== '');
  const day = Number(after) === 0 ? '' : `, from\u00a0day\u00a0${after}`;
  return `${zoneName(zones, zone)}: ${counts.join(' and ') || 'none yet'}${day}${chanceWords(chance)}`;
}

interface ResidentProps {
  readonly kind: 'organisms' | 'plants';
  readonly id: string;
  readonly row: AnimalRow | PlantRow;
  readonly entry: LibraryListed | undefined;
  /** Number, place and day as a phrase. */
  readonly words: string;
  readonly onTakeOut: () => void;
  readonly children: ReactNode;
}

/** One of the residents: its name and a phrase; the fields unfold to change it. Newcomers come unfolded. */
function Resident({ kind, id, row, entry, words, onTakeOut, children }: ResidentProps) {
  const fresh = row.at === undefined;
  const [open, setOpen] = useState(fresh);
  return (
    <li className={styles.resident} data-new={fresh}>
      <div className={styles.line}>
        <div>
          <Title kind={kind} id={id} name={row.name} entry={entry} fresh={fresh} />
          <p className={styles.words}>{words}</p>
        </div>
        <button
          type="button"
          className={desk.quiet}
          aria-expanded={open}
          aria-label={`${open ? 'Fold' : 'Change'} ${row.name}`}
          onClick={() => setOpen(!open)}
        >
          {open ? 'Fold' : 'Change'}
        </button>
        <button type="button" className={desk.quiet} aria-label={`Take out ${row.name}`} onClick={onTakeOut}>
          Take out
        </button>
      </div>
      {open && <div className={styles.fields}>{children}</div>}
    </li>
  );
}

interface TitleProps {
  readonly kind: 'organisms' | 'plants';
  readonly id: string;
  readonly name: string;
  readonly entry: LibraryListed | undefined;
  readonly fresh: boolean;
}

function Title({ kind, id, name, entry, fresh }: TitleProps) {
  return (
    <p className={styles.title}>
      {fresh && <em>new: </em>}
      <Link href={`/library/${kind}/${id}`}>{name}</Link>
      {entry?.scientificName && <i> {entry.scientificName}</i>}
    </p>
  );
}

interface ZoneProps {
  readonly name: string;
  readonly zones: SoundLife['zones'];
  readonly value: string;
  readonly choose: (zone: string) => void;
}

function Zone({ name, zones, value, choose }: ZoneProps) {
  return (
    <label className={styles.zone}>
      <span>Zone</span>
      <select
        className={desk.select}
        aria-label={`Zone, ${name}`}
        value={value}
        onChange={({ target }) => choose(target.value)}
      >
        {zones.map((zone) => (
          <option key={zone.id} value={zone.id}>
            {zone.name ?? zone.id}
          </option>
        ))}
      </select>
    </label>
  );
}

interface NumberFieldProps {
  readonly label: string;
  readonly of: string;
  readonly value: string;
  readonly placeholder?: string;
  readonly write: (text: string) => void;
}

function NumberField({ label, of, value, placeholder = '0', write }: NumberFieldProps) {
  return (
    <label className={styles.number}>
      <span>{label}</span>
      <input
        className={desk.input}
        aria-label={`${label}, ${of}`}
        inputMode="decimal"
        autoComplete="off"
        placeholder={placeholder}
        value={value}
        onChange={({ target }) => write(target.value)}
      />
    </label>
  );
}
