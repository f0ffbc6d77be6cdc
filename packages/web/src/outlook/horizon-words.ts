import type { AheadDocument } from '@shoreglass/engine';
import { daysText } from './day-words.ts';
import { ownerWords, percent, turningClaim } from './turning-words.ts';

/** The one figure of an outlook and the sentences around it. */
export interface HorizonWords {
  /** "61 days" */
  readonly figure: string;
  /** "left to itself" */
  readonly after: string;
  readonly spread: string;
  /** What ends it; empty when nothing does. */
  readonly end: string;
}

/** How long the enclosure can be left to its routine, in words; one member is the expected run alone. */
export function horizonWords(document: AheadDocument): HorizonWords {
  const { q50 } = document.handsOffHorizon;
  const { days } = document.run;
  return {
    figure: daysText(Math.min(q50, days)),
    after: q50 >= days ? 'or longer, left to itself' : 'left to itself',
    spread: spreadWords(document),
    end: endWords(document),
  };
}

function spreadWords({ handsOffHorizon: { q10, q90, unbroken }, run: { days, members } }: AheadDocument): string {
  if (members === 1) return 'In the expected run; the spread is on its way.';
  if (unbroken === 1) return `All ${members} runs stay within every band to the end.`;
  const stay = unbroken >= 0.005 ? ` ${percent(unbroken)} of the runs stay within every band to the end.` : '';
  if (q90 < days) return `${Math.round(q10)} to ${daysText(q90)} in 4 runs of 5.${stay}`;
  return `At least ${daysText(q10)} in 9 runs of 10.${stay}`;
}

function endWords(document: AheadDocument): string {
  const [first, ...others] = document.handsOffHorizon.limitedBy;
  if (!first) return '';
  const owner = first.kind === 'dies out' ? '' : ownerWords(first.owner);
  const share = document.run.members === 1 ? '' : ` (${percent(first.share)} of the runs)`;
  const next = others
    .filter((other) => other.share >= 0.05)
    .slice(0, 2)
    .map((other) => `${inSentence(turningClaim(document, other))} (${percent(other.share)})`);
  const rest = next.length > 0 ? ` In others: ${next.join('; ')}.` : '';
  const claim = inSentence(turningClaim(document, first));
  return `What ends it first: ${claim}${owner === '' ? '' : `, ${owner}`}${share}.${rest}`;
}

function inSentence(claim: string): string {
  return claim.charAt(0).toLowerCase() + claim.slice(1);
}
