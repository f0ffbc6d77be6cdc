import { shelfCarbonates, shelfSalts, shelfWaters, targetsOfBands } from '@shoreglass/contract';
import type { Shelf } from './messages.ts';
import { openText } from './open-text.ts';

/** What there is to mix and to buffer with; a text with errors still has the library's shelf. */
export function shelfOf(text: string, fileName: string): Shelf {
  const { document, plan } = openText(text, fileName);
  const content = document?.content;
  const waters = content?.waters ?? [];
  const named = (blend: string | readonly { readonly water: string }[] | undefined) =>
    typeof blend === 'string' ? [blend] : (blend ?? []).map(({ water }) => water);
  return {
    waters: shelfWaters({ waters }),
    salts: shelfSalts(),
    carbonates: shelfCarbonates(),
    fill: named(content?.water.fill),
    topOff: named(content?.water['top-off']),
    own: waters.map(({ id }) => id),
    suited: targetsOfBands(plan?.bands ?? []),
    pieces: (content?.hardscape ?? []).map(({ id }) => id),
    actions: content?.actions?.length ?? 0,
  };
}
