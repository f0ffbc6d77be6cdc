import type { Scene } from '@shoreglass/figures';
import { useLayoutEffect, useRef } from 'react';
import { type Drawn, drawScene } from './draw-scene.ts';

interface SceneViewProps {
  readonly scene: Scene;
  readonly className?: string | undefined;
}

/** A figure in the page. */
export function SceneView({ scene, className }: SceneViewProps) {
  const host = useRef<HTMLDivElement>(null);
  const drawn = useRef<Drawn>(undefined);
  useLayoutEffect(() => {
    if (host.current) drawn.current = drawScene(host.current, scene, drawn.current);
  }, [scene]);
  return <div ref={host} className={className} />;
}
