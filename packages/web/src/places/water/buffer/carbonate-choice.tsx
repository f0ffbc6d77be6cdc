import { quantityText } from '@shoreglass/figures';
import type { Shelf } from '../../../worker/messages.ts';
import desk from '../../sheets/desk.module.css';
import type { BufferDesk } from './buffer-desk.ts';

interface CarbonateChoiceProps {
  readonly laid: BufferDesk;
  readonly shelf: Shelf;
  readonly onChange: (part: Partial<BufferDesk>) => void;
}

/** What may be put in, and in which grain. */
export function CarbonateChoice({ laid, shelf, onChange }: CarbonateChoiceProps) {
  const toggle = (material: string) =>
    onChange({
      materials: laid.materials.includes(material)
        ? laid.materials.filter((each) => each !== material)
        : [...laid.materials, material],
    });
  return (
    <section aria-labelledby="carbonates" className={desk.block}>
      <h2 id="carbonates">What you could put in</h2>
      <ul>
        {shelf.carbonates.map(({ material, name, usualGrain, cautions }) => (
          <li key={material}>
            <label className={desk.check}>
              <input
                type="checkbox"
                checked={laid.materials.includes(material)}
                onChange={() => toggle(material)}
              />
              <span>
                {name}
                <small>
                  grain {grainText(usualGrain)}
                  {cautions.map((caution) => ` · ${caution}`)}
                </small>
              </span>
            </label>
          </li>
        ))}
      </ul>
      <label className={desk.check}>
        <input
          type="checkbox"
          checked={laid.otherGrains}
          onChange={() => onChange({ otherGrains: !laid.otherGrains })}
        />
        <span>
          Try half and double the grain too
          <small>three times the runs</small>
        </span>
      </label>
    </section>
  );
}

/** "3 mm", "1.5 mm" */
export function grainText(grain: number): string {
  const millimetres = Number((grain * 1000).toPrecision(2));
  const digits = Number.isInteger(millimetres) ? 0 : millimetres < 1 ? 2 : 1;
  return quantityText(millimetres, 'mm', digits);
}
