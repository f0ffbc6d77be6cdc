import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** A ref for an element and its inner width in whole pixels; 0 until it was measured. */
export function useWidth<T extends HTMLElement>(): [ref: RefObject<T | null>, width: number] {
  const ref = useRef<T>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    setWidth(contentWidth(element));
    const observer = new ResizeObserver(() => setWidth(contentWidth(element)));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, width];
}

function contentWidth(element: HTMLElement): number {
  const { paddingLeft, paddingRight } = getComputedStyle(element);
  return Math.floor(element.clientWidth - Number.parseFloat(paddingLeft) - Number.parseFloat(paddingRight));
}
