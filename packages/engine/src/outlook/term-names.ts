/**
 * Names under which people know what a process does; a process without one goes by its own, hyphens as spaces.
 * Two processes of one name are one term.
 */
const PLAIN_NAMES: Readonly<Record<string, string>> = {
  'animal-release': 'animals',
  'carbonate-dissolution': 'carbonate dissolving',
  'carcass-breakdown': 'dead animals',
  'cation-exchange': 'exchange by ground and moss',
  'feed-breakdown': 'uneaten feed',
  grazing: 'eaten by animals',
  'litter-breakdown': 'leaf litter',
  mineralisation: 'detritus',
  'organic-carbon-breakdown': 'coloured organic carbon',
  'phosphate-sorption': 'phosphate bound by mud and soil',
  'shell-building': 'shells and moults',
  'wood-leaching': 'wood and peat',
};

/** The name a process has in budgets and reasons. `derived`. */
export function termName(process: string): string {
  return PLAIN_NAMES[process] ?? process.replaceAll('-', ' ');
}
