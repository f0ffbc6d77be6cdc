import type { Point } from '../../scene/path.ts';
import type { Anchor } from '../anchors.ts';
import type { SectionFrame } from '../frame.ts';
import { LANE_SPACING } from '../layout.ts';
import { DENSITIES, type Density, type LabelBlock, labelBlock } from './label-block.ts';
import { stackTops } from './stack.ts';

export interface PlacedLabel {
  readonly block: LabelBlock;
  readonly anchor: Anchor;
  readonly left: number;
  readonly top: number;
  /** Leader from the anchor to the label, corner by corner. */
  readonly leader: readonly Point[];
}

export interface Arrangement {
  readonly labels: readonly PlacedLabel[];
  /** Subjects that found no room at any density. */
  readonly left: number;
}

const EXIT_SPACING = 7;
const GROUND_CLEARANCE = 13;
const CHANNEL_START = 9;
const CHANNEL_WIDTH = 18;

/**
 * Labels for the right margin and leaders that do not cross: what stands in the air leaves upwards, the leftmost
 * highest; what stands in the water leaves through the base, the leftmost lowest; so lines nest and never meet.
 */
export function arrangeLabels(frame: SectionFrame, anchors: readonly Anchor[]): Arrangement {
  const { top, bottom } = frame.layout.labelColumn;
  const { blocks, left } = fitBlocks(frame, inOrder(anchors));
  const gap = blocks[0]?.block.density.gap ?? 0;
  const wishes = blocks.map(({ block, anchor }, index) => ({
    wish: wishedTop(frame, { anchor, index, count: blocks.length }) - block.hook,
    height: block.height,
  }));
  const tops = stackTops(wishes, { top, bottom, gap });
  const hooks = blocks.map(({ block }, index) => (tops[index] ?? 0) + block.hook);
  const exits = exitHeights(
    frame,
    blocks.map(({ anchor }) => anchor),
    hooks,
  );
  const channels = channelsOf(exits, hooks);
  return {
    left,
    labels: blocks.map(({ block, anchor }, index) => ({
      block,
      anchor,
      left: frame.layout.labelColumn.left,
      top: tops[index] ?? 0,
      leader: leaderOf(frame, anchor, {
        exit: exits[index] ?? 0,
        hook: hooks[index] ?? 0,
        channel: channels[index] ?? 0,
      }),
    })),
  };
}

function inOrder(anchors: readonly Anchor[]): Anchor[] {
  const air = anchors.filter((anchor) => anchor.way === 'air').sort((a, b) => a.x - b.x);
  const base = anchors.filter((anchor) => anchor.way === 'base').sort((a, b) => b.x - a.x);
  return [...air, ...base];
}

interface Fitted {
  readonly blocks: readonly { readonly block: LabelBlock; readonly anchor: Anchor }[];
  readonly left: number;
}

/** The roomiest density at which all labels fit; at the tightest, films, litter and plants give way to animals. */
function fitBlocks(frame: SectionFrame, anchors: readonly Anchor[]): Fitted {
  const { width, top, bottom } = frame.layout.labelColumn;
  const at = (density: Density, kept: readonly Anchor[]) =>
    kept.map((anchor) => ({ anchor, block: labelBlock(anchor.subject, width, density) }));
  const fits = (blocks: Fitted['blocks'], gap: number) =>
    blocks.reduce((sum, { block }) => sum + block.height + gap, -gap) <= bottom - top;
  for (const density of DENSITIES) {
    const blocks = at(density, anchors);
    if (fits(blocks, density.gap)) return { blocks, left: 0 };
  }
  const tightest = DENSITIES[DENSITIES.length - 1] as Density;
  let kept = [...anchors];
  while (kept.length > 1 && !fits(at(tightest, kept), tightest.gap)) {
    const weakest = [...kept].sort((a, b) => importance(a) - importance(b))[0];
    kept = kept.filter((anchor) => anchor !== weakest);
  }
  return { blocks: at(tightest, kept), left: anchors.length - kept.length };
}

function importance({ subject }: Anchor): number {
  const rank = { litter: 0, film: 1, 'bank plant': 2, 'water plant': 3, animal: 4 }[subject.group];
  return rank + (subject.alarm ? 10 : 0);
}

/** Labels want to be level with what they name; those of the water, near the lane their leader comes along. */
function wishedTop(
  frame: SectionFrame,
  { anchor, index, count }: { anchor: Anchor; index: number; count: number },
): number {
  if (anchor.way === 'air') return Math.min(frame.y(anchor.height), airLimit(frame, anchor)) - 24;
  return frame.layout.laneTop - (count - 1 - index) * 40;
}

/** Lowest pixel at which a leader may run right from an anchor without entering the ground. */
function airLimit(frame: SectionFrame, anchor: Anchor): number {
  const crest = frame.ground.highest(anchor.x, frame.plan.box.length);
  return Math.max(frame.layout.inside.top + 8, frame.y(crest) - GROUND_CLEARANCE);
}

/** Where each leader passes the right pane: level with its label where the air allows it. */
function exitHeights(frame: SectionFrame, anchors: readonly Anchor[], hooks: readonly number[]): number[] {
  const air = anchors.filter((anchor) => anchor.way === 'air');
  const exits = airExits(frame, air, hooks);
  const lanes = anchors.slice(air.length).map((_, lane) => frame.layout.laneTop + LANE_SPACING * lane);
  return [...exits, ...lanes];
}

/** Below the cover, above the ground, in the order of the labels; closer together where the air is narrow. */
function airExits(frame: SectionFrame, air: readonly Anchor[], hooks: readonly number[]): number[] {
  const limits = air.map((anchor) => Math.min(airLimit(frame, anchor), frame.y(anchor.height) - 2));
  const ceiling = frame.layout.inside.top + 8;
  const lowest = limits.reduce((least, limit) => Math.min(least, limit), Number.POSITIVE_INFINITY);
  const spacing = Math.min(EXIT_SPACING, Math.max(0.5, (lowest - ceiling) / Math.max(1, air.length)));
  const exits: number[] = [];
  let next = Number.POSITIVE_INFINITY;
  for (let index = air.length - 1; index >= 0; index--) {
    next = Math.min(hooks[index] ?? 0, limits[index] ?? 0, next - spacing);
    exits[index] = next;
  }
  return exits.map((exit, index) => Math.max(exit, ceiling + index * spacing));
}

/** Which vertical lane of the gutter each leader turns in: among those that rise the topmost is nearest the glass. */
function channelsOf(exits: readonly number[], hooks: readonly number[]): number[] {
  const rises = exits.map((exit, index) => (hooks[index] ?? 0) <= exit);
  const channels = exits.map(() => 0);
  for (let start = 0; start < exits.length; ) {
    let end = start;
    while (end < exits.length && rises[end] === rises[start]) end++;
    const count = end - start;
    for (let index = start; index < end; index++) {
      const position = rises[start] ? index - start : end - 1 - index;
      channels[index] = CHANNEL_START + (count === 1 ? 0 : (CHANNEL_WIDTH * position) / (count - 1));
    }
    start = end;
  }
  return channels;
}

function leaderOf(
  frame: SectionFrame,
  anchor: Anchor,
  { exit, hook, channel }: { exit: number; hook: number; channel: number },
): Point[] {
  const [x, y] = frame.at(anchor.x, anchor.height);
  const turn = frame.layout.inside.right + channel;
  const end = frame.layout.labelColumn.left - 5;
  const corners: Point[] = [
    [x, y],
    [x, exit],
    [turn, exit],
    [turn, hook],
    [end, hook],
  ];
  return corners.filter((corner, index) => {
    const before = corners[index - 1];
    return !before || Math.hypot(corner[0] - before[0], corner[1] - before[1]) > 0.01;
  });
}
