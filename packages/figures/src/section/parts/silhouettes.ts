/** A tiny animal drawn around (0, 0), about 10 wide, facing left. */
export interface Silhouette {
  /** Filled with ink, filled with paper and outlined, and drawn as a line; each may be empty. */
  readonly solid: string;
  readonly hollow: string;
  readonly line: string;
}

const DOT: Silhouette = { solid: 'M-1.8 0a1.8 1.8 0 1 0 3.6 0a1.8 1.8 0 1 0 -3.6 0', hollow: '', line: '' };

/** By words in the common name or the species; whatever is not found here is drawn as a dot. */
const BY_WORD: readonly (readonly [RegExp, Silhouette])[] = [
  [
    /snail|ramshorn|limpet|planorb|physa|lymnaea/i,
    {
      solid: '',
      hollow: 'M-2.4 -1.2a3 3 0 1 1 6 0a3 3 0 1 1 -6 0',
      line: 'M-5.6 1.2q.2 1.2 1.6 1.2h7.6q1 0 1.6 -.5M-5.4 1.3l-.9 -1.6M-4.6 1.6l-.1 -1.8M2.2 -1.2a1.7 1.7 0 1 0 -1.7 1.7a2.6 2.6 0 0 0 2.4 -1.6M.5 -1.2h.1',
    },
  ],
  [
    /amphipod|gammar|hyalell|scud|sandhopper/i,
    {
      solid: 'M-4.2 .6q.6 -3 3.8 -3q3.6 0 4.8 4.4q-2 -2.2 -4.6 -1.8q-2.4 .6 -4 .4',
      hollow: '',
      line: 'M-4 0l-2.4 -1.4M-4.2 .6l-2 .4M-2 .6l-.6 2M-.4 .4v2M1.2 .4l.8 1.8',
    },
  ],
  [
    /woodlouse|woodlice|isopod|trichonisc|porcell|asell|armadill/i,
    {
      solid: 'M-4.2 .8q.2 -3 4.2 -3t4.2 3q-4.2 1 -8.4 0',
      hollow: '',
      line: 'M-4 .2l-2 -1.4M-2.6 1.2l-.5 1.2M-.8 1.4v1.2M1 1.4l.3 1.2M2.8 1.2l.6 1.1',
    },
  ],
  [
    /springtail|collembol|folsomia|sinella|isotom/i,
    {
      solid: 'M-2.6 .2q.4 -1.6 2.6 -1.4q2 .2 2.6 1.8q-2.6 .8 -5.2 -.4',
      hollow: '',
      line: 'M-2.6 0l-1.6 -1.2M2 .8l-2.4 1.4M-1 .8l-.4 .9',
    },
  ],
  [
    /shrimp|neocarid|carid/i,
    {
      solid: 'M-5 -.2q2.4 -2 5 -1.4q2.6 .8 4 3.4l1.2 .2l-1 1.2q-2.2 -1.8 -4.6 -1.8q-2.6 .2 -4.6 -1.6',
      hollow: '',
      line: 'M-5 -.4q-1.6 -1 -2.4 -2.6M-5 -.2q-1.8 0 -2.8 .8M-2.4 1l-.6 1.8M-.8 1.2v1.8M.8 1.4l.6 1.6',
    },
  ],
  [
    /worm|tubific|enchytr|lumbric|planaria/i,
    { solid: '', hollow: '', line: 'M-5 .8q1.6 -2.6 3.2 -.8t3.2 0t3.4 -.6' },
  ],
];

export function silhouetteOf(names: string): Silhouette {
  return BY_WORD.find(([word]) => word.test(names))?.[1] ?? DOT;
}
