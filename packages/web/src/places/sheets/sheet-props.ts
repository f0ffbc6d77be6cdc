import type { EnclosureFile } from '@shoreglass/contract';
import type { Outlook } from '../../outlook/outlook-store.ts';

/** What every sheet is given. The outlook is undefined until its first look has begun. */
export interface SheetProps {
  readonly file: EnclosureFile;
  readonly outlook: Outlook | undefined;
}
