import { InvalidArgumentError } from 'commander';

/** Reads an option as a whole number in a range; says what would be accepted otherwise. */
export function wholeNumber(least: number, most: number): (text: string) => number {
  return (text) => {
    const value = Number(text);
    if (!/^\d+$/.test(text.trim()) || value < least || value > most) {
      throw new InvalidArgumentError(`Give a whole number from ${least} to ${most}.`);
    }
    return value;
  };
}
