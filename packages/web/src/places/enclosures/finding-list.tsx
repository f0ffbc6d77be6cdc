import type { LocatedFinding } from '@shoreglass/contract';
import { Link } from 'wouter';
import { unbroken } from '../../app/unbroken.ts';
import { capital } from '../../outlook/turning-words.ts';
import type { FindingLink } from './finding-links.ts';
import styles from './finding-list.module.css';

interface FindingListProps {
  readonly id: string;
  readonly findings: readonly LocatedFinding[];
  readonly linksOf: (finding: LocatedFinding) => readonly FindingLink[];
  readonly onChoose: (finding: LocatedFinding) => void;
}

/** What was found in a text, errors first, each a way to its place. */
export function FindingList({ id, findings, ...means }: FindingListProps) {
  const errors = findings.filter(({ severity }) => severity === 'blocking');
  const remarks = findings.filter(({ severity }) => severity !== 'blocking');
  return (
    <div id={id} className={styles.findings} role="status">
      {findings.length === 0 && <p className={styles.none}>No errors found. It can be run.</p>}
      {errors.length > 0 && <Findings title={count(errors.length, 'error')} findings={errors} {...means} />}
      {remarks.length > 0 && (
        <Findings title={count(remarks.length, 'remark')} findings={remarks} {...means} />
      )}
    </div>
  );
}

type FindingsProps = Omit<FindingListProps, 'id'> & { readonly title: string };

function Findings({ title, findings, linksOf, onChoose }: FindingsProps) {
  return (
    <section>
      <h2>{title}</h2>
      <ul className={styles.list}>
        {findings.map((finding) => (
          <li key={`${finding.line}:${finding.column}:${finding.message}`} data-severity={finding.severity}>
            <button type="button" className={styles.place} onClick={() => onChoose(finding)}>
              line {finding.line}
            </button>
            <p>
              {unbroken(sentenceOf(finding))} <span className={styles.mend}>{unbroken(finding.mend)}</span>
              {finding.source !== undefined && (
                <span className={styles.source}>Source: {finding.source}</span>
              )}
              <span className={styles.links}>
                {linksOf(finding).map(({ words, href }) => (
                  <Link key={href} href={href}>
                    {words}
                  </Link>
                ))}
              </span>
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

function count(number: number, noun: string): string {
  return `${number} ${noun}${number === 1 ? '' : 's'}`;
}

/** An error says which key it is about; a remark is a sentence of its own. */
function sentenceOf({ severity, path, message, value }: LocatedFinding): string {
  const said = value === undefined ? '' : ` (it says: ${value})`;
  const needsSubject = severity === 'blocking' && path !== '' && !message.startsWith('the ');
  const sentence = needsSubject ? `${path} ${message}${said}` : `${capital(message)}${said}`;
  return /[.!?]$/.test(sentence) ? sentence : `${sentence}.`;
}
