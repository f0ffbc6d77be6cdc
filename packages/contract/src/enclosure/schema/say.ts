/** Joins what is wrong and how to mend it into one message of the schema; `toldApart` takes them apart again. */
export function said(message: string, mend: string): string {
  return `${message}\n${mend}`;
}

export function toldApart(text: string): { readonly message: string; readonly mend: string } {
  const cut = text.indexOf('\n');
  return cut < 0 ? { message: text, mend: '' } : { message: text.slice(0, cut), mend: text.slice(cut + 1) };
}

/** 'a', 'b' or 'c' */
export function oneOf(names: readonly string[]): string {
  const quoted = names.map((name) => `'${name}'`);
  return quoted.length < 2
    ? (quoted[0] ?? '')
    : `${quoted.slice(0, -1).join(', ')} or ${quoted[quoted.length - 1]}`;
}
