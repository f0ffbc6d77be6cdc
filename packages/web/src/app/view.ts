import { type PaletteName, palette } from '@shoreglass/figures';
import { create } from 'zustand';
import { recall, remember } from './kept.ts';

interface ViewState {
  readonly view: PaletteName;
  choose(view: PaletteName): void;
}

/** Day or night view: what the keeper chose last, and before any choice what the device prefers. */
export const useView = create<ViewState>((set) => ({
  view: storedView() ?? preferredView(),
  choose(view) {
    remember('view', view);
    set({ view });
  },
}));

/** Follows the device while nothing was chosen, and keeps the page's colours in step with the view. */
export function keepViewApplied(): void {
  applyView(useView.getState().view);
  useView.subscribe(({ view }) => applyView(view));
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => {
    if (storedView() === undefined) useView.setState({ view: preferredView() });
  });
}

/** Sets the palette as custom properties on the root: `waterDeep` becomes `--water-deep`. */
function applyView(view: PaletteName): void {
  const root = document.documentElement;
  const { name, ...inks } = palette(view);
  for (const [ink, colour] of Object.entries(inks))
    root.style.setProperty(`--${ink.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`, colour);
  root.style.colorScheme = name === 'night' ? 'dark' : 'light';
  root.dataset.view = name;
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', inks.paper);
}

function storedView(): PaletteName | undefined {
  const stored = recall('view');
  return stored === 'day' || stored === 'night' ? stored : undefined;
}

function preferredView(): PaletteName {
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'night' : 'day';
}
