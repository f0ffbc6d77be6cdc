/** Units that stand behind a number, the longer before the shorter that begin them. */
const UNITS = /(\d) (%|°[A-Za-z]+|µS\/cm|cm²|mm|cm|m|mg|kg|g|mL|L|W|K|d|h|days?|weeks?)(?![A-Za-z])/g;

/** A sentence in which a number and its unit keep to one line: "at least 24 °C" never ends in "24". */
export function unbroken(sentence: string): string {
  return sentence.replace(UNITS, '$1\u00a0$2');
}
