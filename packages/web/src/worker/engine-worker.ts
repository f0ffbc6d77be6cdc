import { analyseWater, editEnclosure, startFromReadings } from '@shoreglass/contract';
import {
  compareRecipes,
  expectedDocument,
  expectedRun,
  type MemberBatch,
  type Plan,
  type PreparedOutlook,
  prepareOutlook,
  type RecipeRequest,
  requestProblems,
  runMembers,
  runTrial,
  solveRecipe,
  summarise,
  type TrialRun,
} from '@shoreglass/engine';
import { changeOver } from './change-over.ts';
import { carryOutCounts } from './counts-orders.ts';
import { carryOutLife } from './life-orders.ts';
import type { Answer, Order, ReadText, Recipes, Results, WithRooms } from './messages.ts';
import { layBeside, openText } from './open-text.ts';
import { carryOutShape } from './shape-orders.ts';
import { shelfOf } from './shelf-of.ts';

let prepared: PreparedOutlook | undefined;
let expected: ReturnType<typeof expectedRun> | undefined;
let held: Plan | undefined;

function readText(text: string, fileName: string): ReadText {
  const { document, plan, findings } = openText(text, fileName);
  return { name: document?.content.name, plan, findings };
}

function inHand(): PreparedOutlook {
  if (!prepared) throw new Error('No plan was prepared.');
  return prepared;
}

function expectedOnce(): ReturnType<typeof expectedRun> {
  expected ??= expectedRun(inHand());
  return expected;
}

function recipesFor(request: RecipeRequest, compare: boolean): Recipes {
  const problems = requestProblems(request);
  if (problems.length > 0) return { problems, choices: [] };
  if (compare) return { problems, choices: compareRecipes(request) };
  const recipe = solveRecipe(request);
  const about = 'Comes nearest to all targets.';
  return { problems, choices: [{ id: 'closest', name: 'closest', about, recipe }] };
}

function heldPlan(): Plan {
  if (!held) throw new Error('No plan is held.');
  return held;
}

function carryOut(order: Order): Results[keyof Results] {
  switch (order.do) {
    case 'read':
      return readText(order.text, order.fileName);
    case 'prepare':
      prepared = prepareOutlook(order.plan, order.options);
      expected = undefined;
      return undefined;
    case 'expected':
      return expectedDocument(inHand(), expectedOnce());
    case 'members':
      return runMembers(inHand(), order.from, order.to);
    case 'summarise':
      return summarise(inHand(), expectedOnce(), order.batches);
    case 'shelf':
      return shelfOf(order.text, order.fileName);
    case 'edit': {
      const text = order.edits.reduce((so, { path, value }) => editEnclosure(so, path, value), order.text);
      return { text, findings: openText(text, order.fileName).findings };
    }
    case 'analyse':
      return analyseWater(order.written);
    case 'recipes':
      return recipesFor(order.request, order.compare);
    case 'start from':
      return startFromReadings(order.plan, order.readings);
    case 'change over':
      return changeOver(order.change);
    case 'hold':
      held = order.plan;
      return undefined;
    case 'trial':
      return runTrial(heldPlan(), order.order);
    case 'life':
    case 'community':
    case 'newcomer':
    case 'hunters':
    case 'feeding':
      return carryOutLife(order);
    case 'counts':
      return carryOutCounts(order);
    case 'shape':
    case 'climate':
    case 'cover':
      return carryOutShape(order);
  }
}

self.onmessage = ({ data: order }: MessageEvent<WithRooms>) => {
  try {
    layBeside(order.rooms);
    const result = carryOut(order);
    const moved = buffersOf(order, result);
    self.postMessage({ result } satisfies Answer, { transfer: moved });
  } catch (error) {
    self.postMessage({ error: error instanceof Error ? error.message : String(error) } satisfies Answer);
  }
};

/** What is handed over instead of copied. */
function buffersOf(order: Order, result: Results[keyof Results]): ArrayBuffer[] {
  if (order.do === 'members') {
    const { series, books } = result as MemberBatch;
    return [series.buffer as ArrayBuffer, books.buffer as ArrayBuffer];
  }
  if (order.do !== 'trial') return [];
  return (result as readonly TrialRun[]).flatMap(({ series }) =>
    series.map(({ buffer }) => buffer as ArrayBuffer),
  );
}
