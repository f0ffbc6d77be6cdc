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

function spreadWords({
  handsOffHorizon: { q10, q90, unbroken },
  run: { days, members },
}: AheadDocument): string {
  if (members === 1) return 'In the expected run; the spread is on its way.';
  if (unbroken === 1) return `All ${members} runs stay within every band to the end.`;
  const stay =
    unbroken >= 0.005 ? ` ${percent(unbroken)} of the runs stay within every band to the end.` : '';
  const end = q90 < days ? daysText(q90) : `${daysText(days)} or longer`;
  return `${Math.round(q10)} to ${end} in 4 runs of 5.${stay}`;
}

function endWords(document: AheadDocument): string {
  const [first] = document.handsOffHorizon.limitedBy;
  if (!first) return '';
  const owner = first.kind === 'dies out' ? '' : ownerWords(first.owner);
  const share = document.run.members === 1 ? '' : ` (${percent(first.share)} of the runs)`;
  const claim = inSentence(turningClaim(document, first));
  return `What ends it first: ${claim}${owner === '' ? '' : `, ${owner}`}${share}.`;
}

function inSentence(claim: string): string {
  return claim.charAt(0).toLowerCase() + claim.slice(1);
}
