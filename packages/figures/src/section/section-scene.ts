import { remembered } from '../scene/remembered.ts';
import { element, group, type Scene, type SceneNode, sceneOf } from '../scene/scene.ts';
import { type SectionFrame, sectionFrame } from './frame.ts';
import { naming } from './labels/leaders.ts';
import { materialPatterns } from './materials.ts';
import { airCaption, glassFog, mist } from './parts/air.ts';
import { animals } from './parts/animals.ts';
import { layerNames, levelCaption } from './parts/captions.ts';
import { equipment, trickle } from './parts/equipment.ts';
import { glass, glassDefinitions, lamps } from './parts/glass.ts';
import { groundLayers } from './parts/ground-layers.ts';
import { groundLine } from './parts/ground-line.ts';
import { levelLine, openWater, waterDefinitions } from './parts/open-water.ts';
import { bankPlants, waterPlants } from './parts/plants.ts';
import { attachedAlgae, litterOnFloor } from './parts/pool-floor.ts';
import { roofs } from './parts/roofs.ts';
import { rulers } from './parts/rulers.ts';
import { stones } from './parts/stones.ts';
import { aboveGroundDefinition, wood } from './parts/wood.ts';
import type { SectionOptions } from './section-plan.ts';
import { sectionSentence } from './sentence.ts';

type Part = (frame: SectionFrame) => SceneNode | undefined;

/** A part that the day does not change: drawn once for a plan at a size. */
function still(part: Part): Part {
  const memory = remembered<SectionFrame['plan'], SceneNode | undefined>();
  return (frame) => memory(frame.plan, frame.key, () => part(frame));
}

/** What lies inside the glass, back to front. */
const INSIDE: readonly Part[] = [
  openWater,
  groundLayers,
  waterPlants,
  still(stones),
  still(wood),
  attachedAlgae,
  litterOnFloor,
  equipment,
  still(groundLine),
  still(roofs),
  trickle,
  bankPlants,
  levelLine,
  animals,
  mist,
  glassFog,
];

/** What lies around it and over it. */
const AROUND: readonly Part[] = [
  still(glass),
  still(lamps),
  still(rulers),
  layerNames,
  airCaption,
  levelCaption,
  naming,
];

const stillDefinitions = remembered<SectionFrame['plan'], SceneNode[]>();

/** The enclosure to scale, cut along its length and seen from the front, as it would be on one day. */
export function sectionScene(options: SectionOptions): Scene {
  const frame = sectionFrame(options);
  const definitions = [
    ...stillDefinitions(frame.plan, frame.key, () => [
      ...glassDefinitions(frame),
      aboveGroundDefinition(frame),
      ...materialPatterns(frame),
    ]),
    ...waterDefinitions(frame),
  ];
  return sceneOf(options.size, sectionSentence(options.plan, options.day), [
    element('defs', {}, ...definitions),
    group(
      { 'clip-path': frame.url('glass') },
      INSIDE.map((part) => part(frame)),
    ),
    ...AROUND.map((part) => part(frame)),
  ]);
}
