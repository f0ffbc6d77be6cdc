import type { Shelf } from '../../../worker/messages.ts';
import desk from '../../sheets/desk.module.css';
import { AmountField } from '../amount/amount-field.tsx';
import { useUnits } from '../amount/remembered-units.ts';
import type { Written } from '../amount/written.ts';
import { type PoolNow, PoolNowChoice } from './pool-now.tsx';
import { type RecipeDesk, suitedTargets, TARGETS } from './recipe-desk.ts';
import styles from './targets.module.css';

interface TargetsProps {
  readonly laid: RecipeDesk;
  readonly shelf: Shelf;
  /** Water the enclosure holds when filled [L]. */
  readonly volume: number | undefined;
  readonly pools: readonly PoolNow[];
  readonly onChange: (part: Partial<RecipeDesk>) => void;
}

const LABELS: Readonly<Record<string, string>> = {
  GH: 'General hardness, GH',
  KH: 'Carbonate hardness, KH',
  calcium: 'Calcium',
  magnesium: 'Magnesium',
  sodium: 'Sodium, at most',
  conductivity: 'Conductivity, at most',
};

/** What the water is to be, and how much of it. */
export function Targets({ laid, shelf, volume, pools, onChange }: TargetsProps) {
  const write = (id: string, written: Written) => onChange({ targets: { ...laid.targets, [id]: written } });
  const conflicts = shelf.suited.flatMap(({ conflict }) => (conflict === undefined ? [] : [conflict]));
  return (
    <section aria-labelledby="wanted" className={desk.block}>
      <h2 id="wanted">The water you want</h2>
      {TARGETS.map(({ id }) => (
        <AmountField
          key={id}
          id={id}
          label={LABELS[id] ?? id}
          written={laid.targets[id]}
          onWrite={(written) => write(id, written)}
          placeholder="any"
        />
      ))}
      <AmountField
        id="volume"
        label="How much of it"
        written={laid.volume}
        onWrite={(written) => onChange({ volume: written })}
      >
        {volume !== undefined && <p>{`The enclosure holds ${volume.toFixed(1)}\u00a0L when filled.`}</p>}
      </AmountField>
      <AmountField
        id="volume"
        label="Of that, stays in the enclosure"
        written={laid.kept}
        onWrite={(kept) => onChange({ kept })}
        placeholder="none"
      />
      {laid.kept !== undefined && laid.kept.text.trim() !== '' && (
        <div className={styles.pool}>
          <PoolNowChoice
            pools={pools}
            value={laid.keptFrom ?? 'fill'}
            onChange={(keptFrom) => onChange({ keptFrom })}
          />
        </div>
      )}
      {conflicts.map((conflict) => (
        <p key={conflict}>{conflict}</p>
      ))}
      <p>
        <button
          type="button"
          className={desk.quiet}
          onClick={() =>
            onChange({ targets: { ...laid.targets, ...suitedTargets(shelf, useUnits.getState().units) } })
          }
        >
          Take GH and KH from those who live here
        </button>
      </p>
    </section>
  );
}
