import type { EnclosureFile } from '@shoreglass/contract';
import type { ReactNode } from 'react';
import { Frame } from '../app/frame.tsx';
import { Trouble } from '../app/trouble.tsx';
import { useEnclosure } from '../files/queries.ts';

interface OpenedEnclosureProps {
  readonly id: string;
  /** Name of the place, for when the file cannot be had. */
  readonly name: string;
  /** What stands there meanwhile. */
  readonly meanwhile?: ReactNode;
  readonly children: (file: EnclosureFile) => ReactNode;
}

/** A place about one enclosure: opens its file, waits for it, and says why when it cannot be had. */
export function OpenedEnclosure({ id, name, meanwhile, children }: OpenedEnclosureProps) {
  const { data: file, error, refetch } = useEnclosure(id);
  if (file) return <>{children(file)}</>;
  return (
    <Frame title={error ? name : 'Opening …'}>
      {error ? (
        <Trouble error={error} again={() => void refetch()} />
      ) : (
        (meanwhile ?? <p role="status">Opening the enclosure …</p>)
      )}
    </Frame>
  );
}
