export * from './day/day-state.ts';
export * from './palette/palette.ts';
export * from './scene/react-attributes.ts';
export * from './scene/scene.ts';
export * from './scene/scene-to-svg.ts';
export { sectionHeight } from './section/layout.ts';
export * from './section/section-legend.ts';
export * from './section/section-plan.ts';
export * from './section/section-scene.ts';
