import desk from './desk.module.css';

interface WrittenNumberProps {
  readonly label: string;
  /** As it is written; whoever holds it says what is wrong with it. */
  readonly value: string;
  readonly onWrite: (value: string) => void;
}

/** A labelled field for a whole number. */
export function WrittenNumber({ label, value, onWrite }: WrittenNumberProps) {
  return (
    <label>
      <span>{label}</span>
      <input
        className={desk.input}
        inputMode="numeric"
        autoComplete="off"
        value={value}
        onChange={({ target }) => onWrite(target.value)}
      />
    </label>
  );
}
