import { openEnclosure } from '@shoreglass/contract';
import {
  expectedDocument,
  expectedRun,
  type MemberBatch,
  type PreparedOutlook,
  prepareOutlook,
  runMembers,
  summarise,
} from '@shoreglass/engine';
import type { Answer, Order, ReadText, Results } from './messages.ts';

let prepared: PreparedOutlook | undefined;
let expected: ReturnType<typeof expectedRun> | undefined;

function readText(text: string, fileName: string): ReadText {
  const { document, plan, findings } = openEnclosure(text, fileName);
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
  }
}

self.onmessage = ({ data: order }: MessageEvent<Order>) => {
  try {
    const result = carryOut(order);
    const moved = order.do === 'members' ? buffersOf(result as MemberBatch) : [];
    self.postMessage({ result } satisfies Answer, { transfer: moved });
  } catch (error) {
    self.postMessage({ error: error instanceof Error ? error.message : String(error) } satisfies Answer);
  }
};

function buffersOf({ series, books }: MemberBatch): ArrayBuffer[] {
  return [series.buffer as ArrayBuffer, books.buffer as ArrayBuffer];
}
