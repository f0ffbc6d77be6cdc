import { inUnit, sameDimension } from './units.ts';

export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The inputs of a case: each is { value, unit }, a bare value, or a group of further inputs. */
export class Inputs {
  private readonly raw: Readonly<Record<string, unknown>>;
  private readonly path: string;

  constructor(raw: Readonly<Record<string, unknown>>, path = '') {
    this.raw = raw;
    this.path = path;
  }

  private name(name: string): string {
    return `input '${this.path}${name}'`;
  }

  private entry(name: string): { value: unknown; unit?: string } {
    const found = Object.hasOwn(this.raw, name) ? this.raw[name] : undefined;
    if (found === undefined || found === null) throw new Error(`${this.name(name)} is missing`);
    if (!isRecord(found) || !('value' in found)) return { value: found };
    const { value, unit } = found;
    if (unit === undefined || unit === null) return { value };
    if (typeof unit !== 'string') throw new Error(`${this.name(name)} has a unit that is not a text`);
    return { value, unit };
  }

  has(name: string): boolean {
    return Object.hasOwn(this.raw, name) && this.raw[name] !== undefined && this.raw[name] !== null;
  }

  names(): string[] {
    return Object.keys(this.raw).filter((name) => this.has(name));
  }

  /** The unit written beside a value, if any. */
  unit(name: string): string | undefined {
    return this.entry(name).unit;
  }

  /** True when the value is given in a unit that measures what `unit` measures, or without unit. */
  measures(name: string, unit: string): boolean {
    const written = this.entry(name).unit;
    return written === undefined || sameDimension(written, unit);
  }

  /** @throws Error when it is missing, not a finite number, or in a unit that cannot be told in `unit`. */
  number(name: string, unit: string): number {
    const { value, unit: written } = this.entry(name);
    return this.converted(name, value, { written, unit });
  }

  numberOr(name: string, unit: string, otherwise: number): number {
    return this.has(name) ? this.number(name, unit) : otherwise;
  }

  /** @throws Error as `number`, for each element. */
  numbers(name: string, unit: string): number[] {
    const { value, unit: written } = this.entry(name);
    if (!Array.isArray(value)) throw new Error(`${this.name(name)} is not a list`);
    return value.map((element) => this.converted(name, element, { written, unit }));
  }

  /** @throws Error when it is missing or not a list. */
  list(name: string): readonly unknown[] {
    const { value } = this.entry(name);
    if (!Array.isArray(value)) throw new Error(`${this.name(name)} is not a list`);
    return value;
  }

  private converted(
    name: string,
    value: unknown,
    { written, unit }: { written: string | undefined; unit: string },
  ): number {
    if (typeof value !== 'number' || !Number.isFinite(value))
      throw new Error(`${this.name(name)} is ${JSON.stringify(value)}, not a finite number`);
    try {
      return inUnit(value, written ?? unit, unit);
    } catch (error) {
      throw new Error(`${this.name(name)}: ${(error as Error).message}`);
    }
  }

  /** @throws Error when it is missing or not a text. */
  text(name: string): string {
    const { value } = this.entry(name);
    if (typeof value !== 'string') throw new Error(`${this.name(name)} is not a text`);
    return value;
  }

  textOr(name: string, otherwise: string): string {
    return this.has(name) ? this.text(name) : otherwise;
  }

  isText(name: string): boolean {
    return this.has(name) && typeof this.entry(name).value === 'string';
  }

  /** @throws Error when it is missing or not a group of inputs. */
  group(name: string): Inputs {
    const found = this.has(name) ? this.raw[name] : undefined;
    if (found === undefined) throw new Error(`${this.name(name)} is missing`);
    if (!isRecord(found)) throw new Error(`${this.name(name)} is not a group of values`);
    return new Inputs(found, `${this.path}${name}.`);
  }

  /** A group that counts as empty when left out. */
  groupOrEmpty(name: string): Inputs {
    return this.has(name) ? this.group(name) : new Inputs({}, `${this.path}${name}.`);
  }
}
