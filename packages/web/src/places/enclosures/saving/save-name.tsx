import styles from './save-name.module.css';
import type { Saving } from './use-saving.ts';

/** The name a text is saved under, where it needs one. */
export function SaveName({ saving: { name, rename } }: { readonly saving: Saving }) {
  if (name === undefined) return null;
  return (
    <label className={styles.name}>
      <span>Save as</span>
      <input
        value={name}
        onChange={({ target }) => rename(target.value)}
        spellCheck={false}
        autoCapitalize="off"
        autoComplete="off"
      />
      <span aria-hidden="true">.yaml</span>
    </label>
  );
}
