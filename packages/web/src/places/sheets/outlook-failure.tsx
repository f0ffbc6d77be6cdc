import type { EnclosureFile } from '@shoreglass/contract';
import { Link } from 'wouter';
import { Trouble } from '../../app/trouble.tsx';
import { lookAheadAgain, type Outlook } from '../../outlook/outlook-store.ts';
import styles from './outlook-failure.module.css';

interface OutlookFailureProps {
  readonly file: EnclosureFile;
  readonly outlook: Outlook | undefined;
}

/** Why the year could not be computed, or not with its spread, and the ways on; nothing where all went well. */
export function OutlookFailure({ file, outlook }: OutlookFailureProps) {
  if (!outlook?.failure) return null;
  const { message, findings } = outlook.failure;
  const sentence = outlook.document
    ? `The spread could not be computed; what is shown is the expected run. ${message}`
    : message;
  return (
    <div className={styles.failure}>
      <Trouble error={new Error(sentence)} again={() => lookAheadAgain(file)} />
      {findings.length > 0 && (
        <Link href={`/enclosures/${file.id}`} className={styles.mend}>
          Mend the text
        </Link>
      )}
    </div>
  );
}
