import { useLocation } from 'wouter';

let justSaved: string | undefined;

/** Opens the text of a file that was saved under a new name; its desk says so. */
export function useOpenSaved(): (id: string) => void {
  const [, navigate] = useLocation();
  return (id) => {
    justSaved = id;
    navigate(`/enclosures/${id}`);
  };
}

/** Id of the file that was saved to get here, told once. */
export function takeJustSaved(): string | undefined {
  const id = justSaved;
  // Told again within the same moment, when a place is set up twice.
  queueMicrotask(() => {
    justSaved = undefined;
  });
  return id;
}
