import type { LibraryListing } from '@shoreglass/contract';
import type { Plan } from '@shoreglass/engine';
import { useMemo } from 'react';
import desk from '../../sheets/desk.module.css';
import styles from './more-part.module.css';

interface SpeciesChoiceProps {
  readonly library: LibraryListing;
  readonly plan: Plan;
  readonly value: string;
  readonly choose: (species: string) => void;
}

const GROUPS = [
  ['water', 'Live in the water'],
  ['amphibious', 'Live in water and on land'],
  ['land', 'Live on land'],
] as const;

/** One of those who live here already, or any animal of the library. */
export function SpeciesChoice({ library, plan, value, choose }: SpeciesChoiceProps) {
  const here = new Set(plan.populations.map(({ id }) => id));
  const others = useMemo(
    () => [...library.animals].sort((a, b) => a.name.localeCompare(b.name, 'en')),
    [library],
  );
  return (
    <label className={styles.species}>
      <span>Whom</span>
      <select className={desk.select} value={value} onChange={({ target }) => choose(target.value)}>
        {plan.populations.length > 0 && (
          <optgroup label="Live here already">
            {plan.populations.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </optgroup>
        )}
        {GROUPS.map(([habitat, label]) => (
          <optgroup key={habitat} label={label}>
            {others
              .filter((each) => each.habitat === habitat && !here.has(each.id))
              .map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
          </optgroup>
        ))}
      </select>
    </label>
  );
}
