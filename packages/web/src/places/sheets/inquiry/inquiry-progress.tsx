import { useEffect, useRef } from 'react';
import desk from '../desk.module.css';
import styles from './inquiry-progress.module.css';
import type { InquiryState } from './inquiry-store.ts';

interface InquiryProgressProps {
  readonly state: InquiryState<unknown>;
  readonly onCancel: () => void;
}

/** How many runs of a question are done, and the way to stop it; it comes into sight when it begins. */
export function InquiryProgress({ state, onCancel }: InquiryProgressProps) {
  const { done, expected } = state;
  const host = useRef<HTMLDivElement>(null);
  useEffect(() => {
    host.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  return (
    <div ref={host} className={styles.progress}>
      <p role="status">
        {expected === 0 ? 'Preparing the runs …' : `${done} of about ${Math.max(done, expected)} runs`}
      </p>
      <progress value={done} max={Math.max(1, expected, done)} aria-label="Runs done" />
      <button type="button" className={desk.quiet} onClick={onCancel}>
        Stop
      </button>
    </div>
  );
}
