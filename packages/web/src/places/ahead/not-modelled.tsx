import styles from './foot.module.css';

/** What the file holds that the outlook leaves out. */
export function NotModelled({ sentences }: { readonly sentences: readonly string[] }) {
  return (
    <section aria-labelledby="not-modelled" className={styles.part}>
      <h2 id="not-modelled">Not yet modelled</h2>
      {sentences.length === 0 ? (
        <p>Everything the file holds takes part in the outlook.</p>
      ) : (
        <ul className={styles.sentences}>
          {sentences.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
