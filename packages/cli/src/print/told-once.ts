/** Something to be told: what it is, what helps, and where that is known from. */
export interface Told {
  readonly severity: 'blocking' | 'warning' | 'note';
  readonly message: string;
  readonly mend: string;
  readonly source?: string;
  /** Of whom or of what, as the message begins. */
  readonly name?: string;
}

/** One sentence, and all that it is told of: the same reason for several animals stands here once. */
export interface Sentence<T extends Told> {
  readonly text: string;
  readonly of: readonly T[];
}

/** Sentences that share what helps and their source. */
export interface ToldTogether<T extends Told> {
  readonly first: T;
  readonly sentences: readonly Sentence<T>[];
}

/** What a message says after the name it begins with; undefined where it does not begin so. */
function afterName({ message, name }: Told): string | undefined {
  if (name === undefined || name === '') return undefined;
  return message.toLowerCase().startsWith(name.toLowerCase()) ? message.slice(name.length) : undefined;
}

/** 'a', 'a and b', 'a, b and c'. */
const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

function sentencesOf<T extends Told>(all: readonly T[]): Sentence<T>[] {
  const alike = gathered(all, (one) => afterName(one) ?? `\0${one.message}`);
  return alike.map((of) => {
    const [first] = of as [T, ...T[]];
    const rest = afterName(first);
    if (rest === undefined || of.length === 1) return { text: first.message, of };
    const [own = '', ...others] = of.map(({ name = '' }) => name);
    return { text: listed([first.message.slice(0, own.length), ...others]) + rest, of };
  });
}

/** Lists of what has the same key, in the order in which the keys first come. */
function gathered<T>(all: readonly T[], keyOf: (one: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const one of all) {
    const key = keyOf(one);
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return [...groups.values()];
}

/** What is to be told, with the same reason, help and source told once; in the order given. */
export function toldOnce<T extends Told>(all: readonly T[]): ToldTogether<T>[] {
  // What has no help and no source shares nothing but its words.
  const keyOf = (one: T): string =>
    JSON.stringify([
      one.severity,
      one.mend,
      one.source ?? '',
      one.mend === '' && (afterName(one) ?? one.message),
    ]);
  return gathered(all, keyOf).map((group) => ({
    first: group[0] as T,
    sentences: sentencesOf(group),
  }));
}
