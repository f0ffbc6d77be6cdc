import { describe, expect, it } from 'vitest';
import { pestEdits } from './pest-edits.ts';

const sound = {
  animals: [{ species: 'hyalella-azteca', zone: 'pool', adults: 4 }],
  routines: [
    { do: 'feed', feed: 'flake', amount: 0.12e-3, every: 3 },
    { do: 'top-off', every: 4 },
  ],
  mist: 0.12e-3,
  actions: [{ do: 'feed', feed: 'flake', amount: 1e-3, after: 10 }],
} as const;

const place = { pest: 'planorbella-duryi', zone: 'pool', day: 60, takes: 20 };

describe('an answer to a pest put into the file', () => {
  it('half the feed halves every feeding from that day on, once or again and again', () => {
    expect(pestEdits(sound as never, { kind: 'less feed' }, { ...place, day: 0 })).toEqual([
      { path: ['routines', 0, 'amount'], value: '0.06 g' },
      { path: ['actions', 0, 'amount'], value: '0.5 g' },
    ]);
    const value = { do: 'feed', feed: 'flake', amount: '0.06 g', every: '3 d', after: '63 d' };
    expect(pestEdits(sound as never, { kind: 'less feed' }, { ...place, day: 61 })).toEqual([
      { path: ['routines', 0, 'until'], value: '60 d' },
      { path: ['routines', 2], value },
    ]);
    const [timed] = [{ ...sound.routines[0], at: 21.5, place: 'land', until: 90 }];
    expect(
      pestEdits({ ...sound, routines: [timed] } as never, { kind: 'less feed' }, { ...place, day: 61 })[1],
    ).toEqual({ path: ['routines', 1], value: { ...value, place: 'land', at: '21:30', until: '90 d' } });
    expect(
      pestEdits({ ...sound, routines: [timed] } as never, { kind: 'less feed' }, { ...place, day: 91 }),
    ).toEqual([]);
  });

  it('a hunter comes in as a newcomer, or as more of one who is there', () => {
    expect(
      pestEdits(sound as never, { kind: 'hunter', hunter: { id: 'anentome-helena', adults: 4 } }, place),
    ).toEqual([
      { path: ['animals', 1], value: { species: 'anentome-helena', zone: 'pool', adults: 4, after: '60 d' } },
    ]);
    const [more] = pestEdits(
      sound as never,
      { kind: 'hunter', hunter: { id: 'hyalella-azteca', adults: 4 } },
      place,
    );
    expect(more?.path).toEqual(['actions', 1]);
  });

  it('half the mist halves what is sprayed in a day', () => {
    expect(pestEdits(sound as never, { kind: 'drier ground' }, place)).toEqual([
      { path: ['devices', 'mister', 'amount'], value: '60 mL' },
    ]);
  });

  it('baits and traps become a routine, traps for the flying alone', () => {
    const value = {
      do: 'remove-animals',
      species: 'planorbella-duryi',
      adults: 20,
      finds: '30 %',
      every: '7 d',
      after: '67 d',
    };
    expect(pestEdits(sound as never, { kind: 'bait', finds: 0.3 }, place)).toEqual([
      { path: ['routines', 2], value: { ...value, juveniles: 20 } },
    ]);
    expect(pestEdits(sound as never, { kind: 'traps', finds: 0.5 }, place)).toEqual([
      { path: ['routines', 2], value: { ...value, finds: '50 %' } },
    ]);
    expect(pestEdits({ ...sound, routines: [] } as never, { kind: 'traps' }, place)[0]?.path).toEqual([
      'routines',
    ]);
  });

  it('doing nothing changes nothing', () => {
    expect(pestEdits(sound as never, { kind: 'nothing' }, place)).toEqual([]);
  });
});
