export { expectedRun, type MemberBatch, runMembers } from './ensemble.ts';
export { type OutlookOptions, type PreparedOutlook, prepareOutlook } from './prepare.ts';
export { expectedDocument, summarise } from './summarise.ts';
