import { STAGES } from '../life/traits.ts';
import type { Action, Routine } from '../plan/care.ts';
import type { HardscapePiece, Plan, Population } from '../plan/plan.ts';
import { run } from '../run/run.ts';
import type { SeriesId } from '../run/series.ts';
import { settingOf } from '../run/setting.ts';
import { expectedDraw, memberDraw } from './prepare.ts';

/**
 * A change to a plan that is tried: pieces left out, pieces or populations put in, work done on days of the run, a part
 * of the feed or of the mist kept back.
 */
export interface PlanChange {
  /** Part of every feeding that is still given [0..1]; all of it when left out. */
  readonly feedShare?: number;
  /** Day from which that part is given [d]; the first when left out. */
  readonly feedFrom?: number;
  /** Part of the mist that is still sprayed [0..1]; all of it when left out. */
  readonly mistShare?: number;
  readonly without?: readonly string[];
  readonly pieces?: readonly HardscapePiece[];
  readonly populations?: readonly Population[];
  readonly actions?: readonly Action[];
}

/** A member by number, or the run of medians and means. */
export type TrialMember = number | 'expected';

/** Runs wanted of one change. Plain data, so that it can be sent to a worker. */
export interface TrialOrder {
  readonly change: PlanChange;
  readonly days: number;
  readonly seed: number;
  readonly members: readonly TrialMember[];
  /** Series wanted back, in this order. */
  readonly series: readonly SeriesId[];
}

/** One run of an order: its series in the order asked for, one value a day. */
export interface TrialRun {
  readonly member: TrialMember;
  readonly series: readonly Float64Array[];
}

/** Orders that may be carried out side by side, and how far the inquiry is. */
export interface TrialRequest {
  readonly orders: readonly TrialOrder[];
  /** What is being found out, as a phrase: 'grams that hold the band'. */
  readonly about: string;
  /** Runs done before this request, and likely in all; the latter is an estimate until the end. */
  readonly done: number;
  readonly expected: number;
}

/**
 * A question that needs runs: it asks for orders, is given their runs in the order of the orders, and returns its
 * answer. Who carries out the orders, in this thread or in others, does not change the answer.
 */
export type Inquiry<Answer> = Generator<TrialRequest, Answer, readonly (readonly TrialRun[])[]>;

type FeedChange = Pick<PlanChange, 'feedShare' | 'feedFrom'>;

function lessFed(action: Action, { feedShare = 1, feedFrom = 0 }: FeedChange): Action {
  if (action.kind !== 'feed' || feedShare === 1 || action.day < feedFrom) return action;
  return { ...action, mass: feedShare * action.mass };
}

/** A routine of feeding up to the day from which less is given, and from then on. */
function lessFedRoutine(routine: Routine, { feedShare = 1, feedFrom = 0 }: FeedChange): Routine[] {
  if (routine.kind !== 'feed' || feedShare === 1) return [routine];
  const { firstDay, everyDays, mass, lastDay = Number.POSITIVE_INFINITY } = routine;
  const less = { ...routine, mass: feedShare * mass };
  if (feedFrom <= firstDay) return [less];
  if (feedFrom > lastDay) return [routine];
  const next = firstDay + Math.ceil((feedFrom - firstDay) / everyDays) * everyDays;
  return [
    { ...routine, lastDay: feedFrom - 1 },
    { ...less, firstDay: next },
  ];
}

/** A plan with a change made. Everything else, the random numbers of members included, stays. @source derived */
export function changedPlan(
  plan: Plan,
  { mistShare = 1, without = [], pieces = [], populations = [], actions = [], ...change }: PlanChange,
): Plan {
  const left = plan.hardscape.filter(({ id }) => !without.includes(id));
  const { mister } = plan.devices;
  return {
    ...plan,
    ...(mister && mistShare !== 1
      ? { devices: { ...plan.devices, mister: { ...mister, dailyMass: mistShare * mister.dailyMass } } }
      : {}),
    hardscape: [...left, ...pieces],
    populations: [...plan.populations, ...populations],
    routines: plan.routines.flatMap((routine) => lessFedRoutine(routine, change)),
    actions: [...plan.actions.map((action) => lessFed(action, change)), ...actions].sort(
      (a, b) => a.day - b.day,
    ),
  };
}

/**
 * Carries out an order: the runs of its members under its change, with the random numbers every other change has.
 * @throws RangeError as `run`, or for a series the plan does not have
 * @source derived: common random numbers, each parameter from a stream of its own
 */
export function runTrial(plan: Plan, order: TrialOrder): TrialRun[] {
  const changed = changedPlan(plan, order.change);
  const setting = settingOf(changed, order.days, STAGES);
  const positions = order.series.map((id) => {
    const position = setting.seriesIds.indexOf(id);
    if (position < 0) throw new RangeError(`the plan has no series '${id}'`);
    return position;
  });
  return order.members.map((member) => {
    const draw = member === 'expected' ? expectedDraw(changed) : memberDraw(changed, order.seed, member);
    const record = run(setting, draw);
    return { member, series: positions.map((position) => record.series[position]!) };
  });
}

/** Answers an inquiry in this thread, one order after the other. @throws as `runTrial`. `derived`. */
export function answerHere<Answer>(plan: Plan, inquiry: Inquiry<Answer>): Answer {
  let step = inquiry.next();
  while (!step.done) step = inquiry.next(step.value.orders.map((order) => runTrial(plan, order)));
  return step.value;
}

/** Runs handed out at a time. */
const PORTION = 4;

/** The order cut into portions of a few members, to be shared among workers. `derived`. */
function portions(order: TrialOrder): TrialOrder[] {
  const count = Math.ceil(order.members.length / PORTION);
  return Array.from({ length: count }, (_, part) => ({
    ...order,
    members: order.members.slice(part * PORTION, (part + 1) * PORTION),
  }));
}

export interface TrialProgress {
  readonly about: string;
  readonly done: number;
  readonly expected: number;
}

/**
 * Answers an inquiry with runs made elsewhere. All portions of a request are asked for at once; `ask` may let them wait.
 * @param ask carries out a portion of an order, in a worker
 * @param progress told after every portion
 * @throws what `ask` rejects with
 * @source derived
 */
export async function answerWith<Answer>(
  inquiry: Inquiry<Answer>,
  ask: (order: TrialOrder) => Promise<readonly TrialRun[]>,
  progress: (so: TrialProgress) => void = () => undefined,
): Promise<Answer> {
  let step = inquiry.next();
  while (!step.done) {
    const { orders, about, done, expected } = step.value;
    let finished = done;
    const runs = await Promise.all(
      orders.map(async (order) => {
        const parts = await Promise.all(
          portions(order).map(async (portion) => {
            const part = await ask(portion);
            finished += part.length;
            progress({ about, done: finished, expected: Math.max(expected, finished) });
            return part;
          }),
        );
        return parts.flat();
      }),
    );
    step = inquiry.next(runs);
  }
  return step.value;
}
