import type { LocatedFinding } from '@shoreglass/contract';
import { type RefObject, useRef } from 'react';
import styles from './text-field.module.css';

interface TextFieldProps {
  readonly text: string;
  readonly onChange: (text: string) => void;
  readonly findings: readonly LocatedFinding[];
  readonly area: RefObject<HTMLTextAreaElement | null>;
  readonly describedBy: string;
}

/** The text of an enclosure with numbered lines; a line with a finding carries a mark beside its number. */
export function TextField({ text, onChange, findings, area, describedBy }: TextFieldProps) {
  const gutter = useRef<HTMLOListElement>(null);
  const marks = marksByLine(findings);
  const lines = text.split('\n').length;
  return (
    <div className={styles.field}>
      <ol ref={gutter} className={styles.gutter} aria-hidden="true">
        {Array.from({ length: lines }, (_, index) => {
          const line = index + 1;
          const mark = marks.get(line);
          return (
            <li key={line} data-mark={mark}>
              {mark === 'blocking' && '✕ '}
              {mark !== undefined && mark !== 'blocking' && '· '}
              {line}
            </li>
          );
        })}
      </ol>
      <textarea
        ref={area}
        className={styles.area}
        aria-label="Text of the enclosure"
        aria-describedby={describedBy}
        aria-invalid={findings.some(({ severity }) => severity === 'blocking')}
        value={text}
        wrap="off"
        spellCheck={false}
        autoCapitalize="off"
        autoCorrect="off"
        onChange={(event) => onChange(event.target.value)}
        onScroll={(event) => {
          if (gutter.current) gutter.current.scrollTop = event.currentTarget.scrollTop;
        }}
      />
    </div>
  );
}

/** Puts the caret on a finding's place and brings its line into view. */
export function goToFinding(area: HTMLTextAreaElement, { line, column }: LocatedFinding): void {
  const lines = area.value.split('\n');
  const before = lines.slice(0, line - 1).reduce((sum, { length }) => sum + length + 1, 0);
  const lineEnd = before + (lines[line - 1]?.length ?? 0);
  const start = Math.min(before + column - 1, lineEnd);
  area.focus();
  area.setSelectionRange(start, lineEnd);
  const lineHeight = area.scrollHeight / Math.max(1, lines.length);
  area.scrollTop = Math.max(0, (line - 4) * lineHeight);
}

function marksByLine(findings: readonly LocatedFinding[]): Map<number, LocatedFinding['severity']> {
  const marks = new Map<number, LocatedFinding['severity']>();
  for (const { line, severity } of findings) if (marks.get(line) !== 'blocking') marks.set(line, severity);
  return marks;
}
