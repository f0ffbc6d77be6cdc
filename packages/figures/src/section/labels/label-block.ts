import type { Palette } from '../../palette/palette.ts';
import { group, type SceneNode } from '../../scene/scene.ts';
import { textAt, textRun } from '../../type/text.ts';
import { fitText, textWidth, wrapText } from '../../type/text-width.ts';
import type { Subject } from '../subjects.ts';

/** How tightly labels are set; the roomiest that fits is taken. */
export interface Density {
  readonly size: number;
  readonly smallSize: number;
  readonly nameLines: number;
  readonly gap: number;
  /** The interval follows on the line of the name. */
  readonly oneLine: boolean;
}

export const DENSITIES: readonly Density[] = [
  { size: 15, smallSize: 12.5, nameLines: 2, gap: 10, oneLine: false },
  { size: 14, smallSize: 12, nameLines: 2, gap: 5, oneLine: false },
  { size: 14, smallSize: 12, nameLines: 1, gap: 4, oneLine: false },
  { size: 13, smallSize: 12, nameLines: 1, gap: 5, oneLine: true },
];

/** The text of one label, broken to the width of the column. */
export interface LabelBlock {
  readonly subject: Subject;
  readonly density: Density;
  readonly number: string;
  readonly nameLines: readonly string[];
  readonly small: string;
  readonly width: number;
  readonly height: number;
  /** From the top of the block to the middle of its first line, where the leader meets it. */
  readonly hook: number;
}

const NUMBER_GAP = 5;

export function labelBlock(subject: Subject, width: number, density: Density): LabelBlock {
  return density.oneLine ? oneLineBlock(subject, width, density) : stackedBlock(subject, width, density);
}

function stackedBlock(subject: Subject, width: number, density: Density): LabelBlock {
  const { size, smallSize, nameLines } = density;
  const number = fitText(subject.number, width, size, 'strong');
  const indent = textWidth(number, size, 'strong') + NUMBER_GAP;
  const names = wrapText(subject.name, { width, firstIndent: indent, size, lines: nameLines });
  const small = fitText(smallText(subject), width, smallSize);
  const widths = names.map((line, index) => textWidth(line, size) + (index === 0 ? indent : 0));
  return {
    subject,
    density,
    number,
    nameLines: names,
    small,
    width: Math.max(textWidth(number, size, 'strong'), textWidth(small, smallSize), ...widths),
    height: lineHeight(size) * Math.max(1, names.length) + smallSize * 1.22,
    hook: size * 0.62,
  };
}

function oneLineBlock(subject: Subject, width: number, density: Density): LabelBlock {
  const { size, smallSize } = density;
  const number = fitText(subject.number, width, size, 'strong');
  const indent = textWidth(number, size, 'strong') + NUMBER_GAP;
  const wanted = subject.alarm ?? subject.interval;
  const smallRoom = Math.min(
    textWidth(wanted, smallSize),
    Math.max(0, width - indent) * (subject.alarm ? 0.7 : 0.5),
  );
  const small = fitText(wanted, smallRoom, smallSize);
  const smallWidth = textWidth(small, smallSize) + NUMBER_GAP;
  const name = fitText(subject.name, Math.max(8, width - indent - smallWidth), size);
  return {
    subject,
    density,
    number,
    nameLines: [name],
    small,
    width: indent + textWidth(name, size) + smallWidth,
    height: lineHeight(size),
    hook: size * 0.62,
  };
}

/** The block's text with its top left corner at (x, top). */
export function drawLabel(block: LabelBlock, at: { x: number; top: number }, palette: Palette): SceneNode {
  const { density, subject } = block;
  const { size, smallSize } = density;
  const strong = { size, face: 'strong', fill: subject.alarm ? palette.vermilion : palette.ink } as const;
  const plain = { size, fill: palette.ink } as const;
  const soft = { size: smallSize, fill: subject.alarm ? palette.vermilion : palette.softInk } as const;
  const baseline = (line: number) => at.top + size * 0.96 + line * lineHeight(size);
  const [firstName = '', ...moreNames] = block.nameLines;
  const first = [
    { content: block.number, style: strong },
    ...(firstName === '' ? [] : [{ content: firstName, style: plain }]),
    ...(density.oneLine ? [{ content: block.small, style: soft }] : []),
  ];
  const starts = startsOf(block, firstName);
  return group({ 'data-subject': subject.key }, [
    ...first.map((part, index) => textRun({ x: at.x + (starts[index] ?? 0), y: baseline(0) }, [part])),
    ...moreNames.map((line, index) => textAt(at.x, baseline(index + 1), line, plain)),
    density.oneLine
      ? undefined
      : textAt(at.x, baseline(Math.max(1, block.nameLines.length) - 1) + smallSize * 1.26, block.small, soft),
  ]);
}

/** Offsets of number, name and interval on the first line. */
function startsOf(block: LabelBlock, firstName: string): number[] {
  const { size } = block.density;
  const name = textWidth(block.number, size, 'strong') + NUMBER_GAP;
  return [0, name, name + textWidth(firstName, size) + NUMBER_GAP];
}

function smallText(subject: Subject): string {
  return [subject.interval, subject.alarm ?? ''].filter((part) => part !== '').join(' · ');
}

function lineHeight(size: number): number {
  return size * 1.18;
}
