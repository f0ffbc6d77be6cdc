import type { EnclosureFile } from '@shoreglass/contract';
import type { AheadDocument } from '@shoreglass/engine';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { fullDate } from '../../outlook/day-words.ts';
import { fingerprint } from '../../outlook/fingerprint.ts';
import styles from './foot.module.css';
import { RunChoiceForm } from './run-choice-form.tsx';

interface RunFactsProps {
  readonly file: EnclosureFile;
  readonly document: AheadDocument;
}

/** How the outlook was made, so that anyone can make it again. */
export function RunFacts({ file, document }: RunFactsProps) {
  const { run, enclosure, closure } = document;
  const print = useMemo(() => fingerprint(document), [document]);
  const [worst, error] = Object.entries(closure).reduce((most, each) => (each[1] > most[1] ? each : most));
  return (
    <section aria-labelledby="made" className={styles.part}>
      <h2 id="made">How it was made</h2>
      <dl className={styles.facts}>
        <dt>Text</dt>
        <dd>
          <Link href={`/enclosures/${file.id}`}>{file.id}.yaml</Link>
          {file.findings.length > 0 &&
            `, ${file.findings.length} ${file.findings.length === 1 ? 'remark' : 'remarks'}`}
        </dd>
        <dt>From</dt>
        <dd>
          {fullDate(enclosure.startDate, 0)}, {run.days} days
        </dd>
        <dt>Runs</dt>
        <dd>
          {run.members === 1 ? 'the expected one so far' : `${run.members}, seed ${run.seed}`}, engine{' '}
          {run.engineVersion}
        </dd>
        <dt>Balances</dt>
        <dd>
          closed to {powerText(error)} or better ({worst} is the largest)
        </dd>
        <dt>Fingerprint</dt>
        <dd data-fingerprint={print}>{print}</dd>
      </dl>
      <RunChoiceForm />
    </section>
  );
}

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** 3e-15 as people write it: "3 × 10⁻¹⁵"; nothing left over is 0. */
function powerText(value: number): string {
  if (value === 0) return '0';
  const [digit = '', power = ''] = value.toExponential(0).split('e');
  const raised = [...power]
    .map((sign) => (sign === '-' ? '⁻' : sign === '+' ? '' : (RAISED[Number(sign)] ?? '')))
    .join('');
  return `${digit}\u00a0×\u00a010${raised}`;
}
