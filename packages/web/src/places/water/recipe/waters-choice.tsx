import type { ShelfWater } from '@shoreglass/contract';
import { alkalinityOf, convert, MOLAR_MASS } from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';
import { useState } from 'react';
import desk from '../../sheets/desk.module.css';
import type { RecipeDesk } from './recipe-desk.ts';
import styles from './recipe-part.module.css';
import { ReportForm } from './report-form.tsx';

interface WatersChoiceProps {
  readonly laid: RecipeDesk;
  readonly waters: readonly ShelfWater[];
  readonly onChange: (part: Partial<RecipeDesk>) => void;
}

/** The waters one may mix from, with what each brings; and a way to type a report. */
export function WatersChoice({ laid, waters, onChange }: WatersChoiceProps) {
  const [typing, setTyping] = useState(false);
  const toggle = (id: string) =>
    onChange({
      waters: laid.waters.includes(id) ? laid.waters.filter((each) => each !== id) : [...laid.waters, id],
    });
  const typed = (id: string) => laid.reports.some((report) => report.id === id);
  const forget = (id: string) =>
    onChange({
      waters: laid.waters.filter((each) => each !== id),
      reports: laid.reports.filter((report) => report.id !== id),
    });
  const keep = (report: Readonly<Record<string, string>>) => {
    const id = report.id ?? '';
    onChange({ reports: [...laid.reports, report], waters: [...laid.waters, id] });
    setTyping(false);
  };
  return (
    <section aria-labelledby="waters" className={desk.block}>
      <h2 id="waters">Waters to mix from</h2>
      <ul>
        {waters.map((water) => (
          <li key={water.id} className={styles.water}>
            <label className={desk.check}>
              <input
                type="checkbox"
                checked={laid.waters.includes(water.id)}
                onChange={() => toggle(water.id)}
              />
              <span>
                {water.name}
                <small>
                  {brings(water)}
                  {water.from === 'file' && !typed(water.id) && ', of this file'}
                </small>
              </span>
            </label>
            {typed(water.id) && (
              <button type="button" className={desk.quiet} onClick={() => forget(water.id)}>
                Forget<span className={desk.unseen}> {water.name}</span>
              </button>
            )}
          </li>
        ))}
      </ul>
      {typing ? (
        <ReportForm taken={waters.map(({ id }) => id)} onKeep={keep} onLeave={() => setTyping(false)} />
      ) : (
        <p>
          <button type="button" className={desk.second} onClick={() => setTyping(true)}>
            Type in a water report
          </button>
        </p>
      )}
    </section>
  );
}

/** "GH 16.2 °dGH, KH 13.1 °dKH, sodium 18.4 mg/L" */
function brings({ composition }: ShelfWater): string {
  const { calcium = 0, magnesium = 0, sodium = 0 } = composition;
  const GH = convert(calcium + magnesium, 'mmol/L', '°dGH');
  const KH = convert(Math.max(0, alkalinityOf(composition)), 'meq/L', '°dKH');
  const salt = sodium * MOLAR_MASS.sodium;
  if (GH < 0.05 && KH < 0.05 && salt < 0.05) return 'nothing to speak of';
  return `GH ${quantityText(GH, '°dGH', 1)}, KH ${quantityText(KH, '°dKH', 1)}, sodium ${quantityText(salt, 'mg/L', 1)}`;
}
