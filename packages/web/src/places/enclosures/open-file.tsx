import { MAX_ENCLOSURE_BYTES } from '@shoreglass/contract';
import type { ChangeEvent } from 'react';
import styles from './open-file.module.css';

interface OpenFileProps {
  readonly onText: (text: string) => void;
  readonly onTrouble: (sentence: string) => void;
}

/** Takes a file from this device into the text field. */
export function OpenFile({ onText, onTrouble }: OpenFileProps) {
  const take = async (event: ChangeEvent<HTMLInputElement>) => {
    const input = event.currentTarget;
    const [file] = input.files ?? [];
    if (!file) return;
    if (file.size > MAX_ENCLOSURE_BYTES) onTrouble(`${file.name} is longer than 256 kB and was not opened.`);
    else onText(await file.text());
    input.value = '';
  };
  return (
    <label className={styles.open}>
      Open a file from this device
      <input type="file" accept=".yaml,.yml,application/yaml,text/plain" onChange={take} />
    </label>
  );
}
