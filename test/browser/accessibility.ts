import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** What axe finds against WCAG 2.0, 2.1 and 2.2, levels A and AA; one line each, none when all is well. */
export async function accessibilityProblems(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  const violations = await page.evaluate(async (rules) => {
    const { axe: engine } = window as unknown as { axe: typeof axe };
    const results = await engine.run({ runOnly: { type: 'tag', values: rules } });
    return results.violations.map(({ id, help, nodes }) => ({
      id,
      help,
      places: nodes.slice(0, 3).map(({ target, any }) => `${target.join(' ')} ${any[0]?.message ?? ''}`),
    }));
  }, RULES);
  return violations.map(({ id, help, places }) => `${id}: ${help} (${places.join(' | ')})`);
}
