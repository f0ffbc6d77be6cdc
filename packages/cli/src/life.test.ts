import { lifeDocumentSchema } from '@shoreglass/contract';
import { describe, expect, it } from 'vitest';
import { type Called, shoreglass } from './cli-test-kit.ts';

const SLOW = 120_000;

const life = (...args: string[]): Called =>
  shoreglass('life', 'beck-bank', '--days', '30', '--members', '2', ...args);

describe('life', () => {
  it(
    '--json prints one document that its schema accepts, with what an addition does',
    () => {
      const { status, stdout } = life('--json', '--add', 'physella-acuta:3');
      expect(status).toBe(0);
      const document = lifeDocumentSchema.parse(JSON.parse(stdout));
      expect(document.addition?.species).toBe('physella-acuta');
      expect(document.populations.map(({ id }) => id)).toContain('porcellio-scaber');
      expect(document.flows.length).toBeGreaterThan(0);
    },
    SLOW,
  );

  it(
    'tells people what does not fit, numbers, food and who eats what',
    () => {
      const { status, stdout } = life();
      expect(status).toBe(0);
      for (const heading of [
        'What does not go together',
        'Numbers',
        'What each food carries',
        'Who eats what',
      ])
        expect(stdout).toContain(heading);
    },
    SLOW,
  );

  it(
    '--pest compares less feed, bait and hunters, and asks for the species in the file',
    () => {
      const { status, stdout } = life('--pest', 'planorbella-duryi');
      expect(status).toBe(0);
      for (const answer of ['nothing is done', 'half the feed', 'a bait a week', 'assassin snails'])
        expect(stdout).toContain(answer);
      const absent = life('--pest', 'physella-acuta');
      expect(absent.status).toBe(2);
      expect(absent.stderr).toMatch(/does not live in this enclosure/);
    },
    SLOW,
  );

  it(
    '--hold says in how many fresh runs the dose holds, as many as are asked for',
    () => {
      const { status, stdout } = life('--json', '--hold', 'hyalella-azteca:20');
      expect(status).toBe(0);
      const { feeding } = lifeDocumentSchema.parse(JSON.parse(stdout));
      expect(feeding?.heldIn.runs).toBe(2);
      expect(feeding?.sentences.join(' ')).toMatch(
        /In (none|\d) of 2 fresh runs.*so few runs tell it roughly/,
      );
    },
    SLOW,
  );

  it(
    'says what is wrong with a wish it cannot read',
    () => {
      const nobody = life('--add', 'unicorn:3');
      expect(nobody.status).toBe(2);
      expect(nobody.stderr).toMatch(/holds no animal 'unicorn'\. Names are those of docs\/library/);
      expect(life('--hold', 'hyalella-azteca').status).toBe(2);
      const late = life('--hold', 'hyalella-azteca:20', '--at', '25:00');
      expect(late.status).toBe(2);
      expect(late.stderr).toMatch(/hours and minutes of the day, such as 21:00/);
      expect(life('--hold', 'hyalella-azteca:20', '--place', 'roof').stderr).toMatch(/Give land or pool/);
      const idle = life('--place', 'land', '--at', '21:00');
      expect(idle.status).toBe(2);
      expect(idle.stderr).toMatch(/--place and --at go with --hold/);
    },
    SLOW,
  );
});
