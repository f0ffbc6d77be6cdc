import { palette, sectionHeight, sectionScene } from '@shoreglass/figures';
import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import { useView } from '../../app/view.ts';
import { SceneView } from '../../drawing/scene-view.tsx';
import { sectionOfText } from '../../engine-client.ts';
import { fetchEnclosure } from '../../files/server.ts';
import styles from './plate.module.css';

const WIDTH = 232;

/** The section of an enclosure as it is planned, small, to tell it from others at a glance. */
export function Plate({ id }: { readonly id: string }) {
  const view = useView((state) => state.view);
  const { data: plan } = useQuery({
    queryKey: ['plate', id],
    queryFn: async ({ signal }) => sectionOfText((await fetchEnclosure(id, signal)).text, `${id}.yaml`),
  });
  const scene = useMemo(() => {
    if (!plan) return undefined;
    const size = { width: WIDTH, height: sectionHeight({ plan, width: WIDTH, labels: false }) };
    const day = { day: 0, populations: {} };
    return sectionScene({ plan, day, size, palette: palette(view), labels: false });
  }, [plan, view]);
  return (
    <div className={styles.plate} aria-hidden="true">
      {scene && <SceneView scene={scene} />}
    </div>
  );
}
