import { nearest } from '@shoreglass/library';
import { z } from 'zod';
import { oneOf, said } from './say.ts';

/** Mend for a key that is not known: the nearest known key, or all of them. */
function mendForKey(key: string, known: readonly string[]): string {
  const near = nearest(key, known, 1);
  return near.length > 0 ? `Did you mean '${near[0]}'?` : `Known keys here: ${known.join(', ')}.`;
}

/** A map with exactly these keys; an unknown key is told with the nearest known one. */
export function keys<S extends z.core.$ZodLooseShape>(shape: S, meaning: string) {
  const known = Object.keys(shape);
  return z
    .strictObject(shape, {
      error: (issue) => {
        if (issue.code === 'unrecognized_keys') {
          const unknown = (issue as unknown as { readonly keys: readonly string[] }).keys;
          const [first = ''] = unknown;
          return said(
            unknown.length > 1
              ? `the keys ${unknown.map((key) => `'${key.slice(0, 60)}'`).join(', ')} are not known`
              : `the key '${first.slice(0, 60)}' is not known`,
            mendForKey(first, known),
          );
        }
        return issue.input === undefined
          ? said('is missing', `Add it with the keys ${known.join(', ')}.`)
          : said('must be a map of keys', `Write it as a map with the keys ${known.join(', ')}.`);
      },
    })
    .describe(meaning);
}

/** One of a few words. */
export function word<const W extends readonly [string, ...string[]]>(words: W, meaning: string) {
  return z
    .enum(words, {
      error: (issue) => {
        if (issue.input === undefined) return said('is missing', `Add it: ${oneOf(words)}.`);
        const near = typeof issue.input === 'string' ? nearest(issue.input, words, 1) : [];
        return said(
          'is not one of the words allowed here',
          near.length > 0 ? `Did you mean '${near[0]}'? Allowed: ${oneOf(words)}.` : `Write ${oneOf(words)}.`,
        );
      },
    })
    .describe(meaning);
}

/** Text of limited length, not empty. */
export function text(meaning: string, longest = 200) {
  return z
    .string({
      error: (issue) =>
        issue.input === undefined
          ? said('is missing', 'Add a text.')
          : said('must be a text', 'Put it between quotes.'),
    })
    .trim()
    .min(1, said('is empty', 'Write something or leave the key out.'))
    .max(longest, said(`is longer than ${longest} characters`, 'Shorten it.'))
    .describe(meaning);
}

/** A name other parts refer to. */
export function id(meaning: string) {
  return text(meaning, 64).regex(
    /^[a-z0-9]+(?:-[a-z0-9]+)*$/,
    said('is not a plain name', 'Use a-z, 0-9 and single hyphens, such as left-pool.'),
  );
}

/** A list of limited length. */
export function list<T extends z.ZodType>(item: T, meaning: string, most = 200) {
  return z
    .array(item, {
      error: (issue) =>
        issue.input === undefined
          ? said('is missing', 'Add a list, each item on a line that starts with "- ".')
          : said('must be a list', 'Start each item on its own line with "- ".'),
    })
    .max(most, said(`has more than ${most} items`, `Keep at most ${most}.`))
    .describe(meaning);
}

/** A whole number without unit. */
export function count(meaning: string, most: number) {
  const wrong = said(`must be a whole number from 0 to ${most}`, 'Write a whole number without unit.');
  return z
    .number({ error: () => wrong })
    .int(wrong)
    .min(0, wrong)
    .max(most, wrong)
    .describe(meaning);
}
