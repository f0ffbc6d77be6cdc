import type { LengthUnit, Scene } from '@shoreglass/figures';
import { type KeyboardEvent, type PointerEvent, type RefObject, useEffect, useRef, useState } from 'react';
import { SceneView } from '../../../drawing/scene-view.tsx';
import { STEPS, valueText } from '../desk/lengths.ts';
import type { Place } from '../desk/moves.ts';
import type { Axis, Handle } from '../handles/handle.ts';
import { type Neighbour, neighboursOf, type Snapped, snapped } from '../handles/snapping.ts';
import { steppedAside, withinReach } from './apart.ts';
import styles from './board.module.css';
import type { BoardActions } from './board-actions.ts';

/** How metres lie on a drawing: the axes it shows, and the map to pixels and back. */
export interface BoardMap {
  readonly across: Extract<Axis, 'x'>;
  readonly up: Extract<Axis, 'y' | 'z'>;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly pixelsPerMetre: number;
}

export interface Mark {
  readonly handle: Handle;
  /** [m] */
  readonly across: number;
  readonly up: number;
}

interface BoardProps extends BoardActions {
  readonly name: string;
  readonly scene: Scene;
  readonly map: BoardMap;
  readonly marks: readonly Mark[];
}

/** A neighbour this near in the drawing attracts what is dragged [px]. */
const ATTRACTION = 7;

interface Held {
  readonly handle: Handle;
  /** Pointer less mark where it was taken hold of [px]. */
  readonly offset: readonly [number, number];
  readonly moved: boolean;
  readonly place?: Place;
  readonly guides: readonly (Neighbour & { readonly axis: Axis })[];
}

/** A drawing whose handles can be dragged, stepped with the arrow keys and typed into. */
export function Board(props: BoardProps) {
  const { name, scene, map, marks, selected, unit } = props;
  const surface = useRef<HTMLFieldSetElement>(null);
  const [held, hold, inHand] = useHeld();
  const focusOn = useKeptFocus(surface, marks, selected);
  const x = (metres: number) => map.left + metres * map.pixelsPerMetre;
  const y = (metres: number) => map.bottom - metres * map.pixelsPerMetre;

  const spots = steppedAside(
    marks.map(({ handle, across, up }) => {
      const spot = { id: handle.id, x: x(across), y: y(up) };
      return handle.id === held?.handle.id ? spot : withinReach(spot, map);
    }),
    held?.handle.id,
  );
  const spotOf = (id: string) => spots.find((spot) => spot.id === id) ?? { x: 0, y: 0 };

  const take = (event: PointerEvent<HTMLButtonElement>, mark: Mark) => {
    if (event.button !== 0) return;
    event.preventDefault();
    const nearest = nearestMark(event, mark);
    const button = surface.current?.querySelector<HTMLElement>(
      `[data-handle="${CSS.escape(nearest.handle.id)}"]`,
    );
    button?.focus({ preventScroll: true });
    surface.current?.setPointerCapture(event.pointerId);
    props.onSelect(nearest.handle);
    const [px, py] = pixelOf(event);
    hold({
      handle: nearest.handle,
      offset: [px - x(nearest.across), py - y(nearest.up)],
      moved: false,
      guides: [],
    });
  };

  /** Where marks stand close together, the one nearest to the pointer is taken. */
  const nearestMark = (event: PointerEvent, fallback: Mark): Mark => {
    const [px, py] = pixelOf(event);
    const distance = (mark: Mark) => {
      const spot = spotOf(mark.handle.id);
      return Math.hypot(px - spot.x, py - spot.y);
    };
    return marks.reduce((best, mark) => (distance(mark) < distance(best) - 0.5 ? mark : best), fallback);
  };

  const pixelOf = (event: PointerEvent): readonly [number, number] => {
    const { left, top } = (surface.current as HTMLElement).getBoundingClientRect();
    return [event.clientX - left, event.clientY - top];
  };

  const drag = (event: PointerEvent<HTMLFieldSetElement>) => {
    const held = inHand();
    if (!held || !event.currentTarget.hasPointerCapture(event.pointerId)) return;
    const [px, py] = pixelOf(event);
    const wanted: readonly [Axis, number][] = [
      [map.across, (px - held.offset[0] - map.left) / map.pixelsPerMetre],
      [map.up, (map.bottom - (py - held.offset[1])) / map.pixelsPerMetre],
    ];
    const found = wanted
      .filter(([axis]) => held.handle.measures.some(({ drag: along }) => along?.axis === axis))
      .map(([axis, position]) => ({
        axis,
        ...snappedOn(held.handle, axis, position, event.altKey || !props.snap),
      }));
    const place = Object.fromEntries(found.map(({ axis, at }) => [axis, at])) as Place;
    const guides = found.flatMap(({ axis, on }) => (on ? [{ axis, ...on }] : []));
    hold({ ...held, moved: true, place, guides });
    props.onDrag(held.handle, place);
  };

  const snappedOn = (handle: Handle, axis: Axis, position: number, free: boolean): Snapped => {
    const room = (map.right - map.left) / map.pixelsPerMetre;
    const high = (map.bottom - map.top) / map.pixelsPerMetre;
    const { coarse, fine } = STEPS[unit];
    return snapped(position, {
      step: coarse / 2,
      fine,
      reach: Math.min(ATTRACTION / map.pixelsPerMetre, coarse),
      neighbours: neighboursOf(props.handles, handle, axis, axis === 'x' ? room : high),
      free,
    });
  };

  const letGo = (takeOver: boolean) => {
    const held = inHand();
    if (!held) return;
    hold(undefined);
    if (held.moved) props.onDrop(held.handle, takeOver ? held.place : undefined);
  };

  const press = (event: KeyboardEvent, handle: Handle) => {
    if (event.key === 'Escape' && inHand()) return letGo(false);
    if (event.key === 'Enter') {
      event.preventDefault();
      return props.onType(handle);
    }
    const way = WAYS[event.key];
    if (!way || event.ctrlKey || event.metaKey) return;
    const axis = way[0] === 'across' ? map.across : map.up;
    if (!handle.measures.some(({ drag: along }) => along?.axis === axis)) return;
    event.preventDefault();
    const { coarse, fine } = STEPS[unit];
    props.onStep(handle, axis, way[1] * (event.shiftKey ? fine : coarse));
  };

  return (
    <fieldset
      ref={surface}
      aria-label={`${name}: what can be moved`}
      className={styles.board}
      data-held={held !== undefined}
      onPointerMove={drag}
      onPointerUp={() => letGo(true)}
      onPointerCancel={() => letGo(false)}
    >
      <SceneView scene={scene} />
      {held?.guides.map(({ axis, at, name: neighbour }) => (
        <Guide key={axis} axis={axis} at={axis === map.across ? x(at) : y(at)} name={neighbour} map={map} />
      ))}
      <Leaders marks={marks} spotOf={spotOf} x={x} y={y} size={map} />
      {marks.map((mark) => (
        <button
          key={mark.handle.id}
          type="button"
          data-handle={mark.handle.id}
          data-group={mark.handle.group}
          data-selected={mark.handle.id === selected?.id}
          data-concerned={props.concerned.has(mark.handle.id)}
          className={styles.handle}
          style={{ left: spotOf(mark.handle.id).x, top: spotOf(mark.handle.id).y }}
          aria-label={spoken(mark.handle, unit)}
          onPointerDown={(event) => take(event, mark)}
          onFocus={() => {
            focusOn(mark.handle.id);
            props.onSelect(mark.handle);
          }}
          onBlur={() => focusOn(undefined)}
          onKeyDown={(event) => press(event, mark.handle)}
          onClick={(event) => {
            // A screen reader presses without a pointer; it wants the fields.
            if (event.detail === 0) props.onType(mark.handle);
          }}
        >
          <span className={styles.mark} aria-hidden="true" />
        </button>
      ))}
      {selected && <Tag mark={marks.find(({ handle }) => handle.id === selected.id)} map={map} unit={unit} />}
    </fieldset>
  );
}

/** What is held: as last drawn, the way to change it, and as it is now. A hand may let go before its last move is drawn. */
function useHeld(): [
  drawn: Held | undefined,
  hold: (next: Held | undefined) => void,
  now: () => Held | undefined,
] {
  const now = useRef<Held>(undefined);
  const [drawn, draw] = useState<Held>();
  const hold = (next: Held | undefined) => {
    now.current = next;
    draw(next);
  };
  return [drawn, hold, () => now.current];
}

/** Two marks that come to lie on one height become one: the focus goes on with what the selected one has become. */
function useKeptFocus(
  surface: RefObject<HTMLElement | null>,
  marks: readonly Mark[],
  selected: Handle | undefined,
): (id: string | undefined) => void {
  const focused = useRef<string>(undefined);
  useEffect(() => {
    const lost = focused.current !== undefined && !marks.some(({ handle }) => handle.id === focused.current);
    if (!lost || !selected) return;
    surface.current?.querySelector<HTMLElement>(`[data-handle="${CSS.escape(selected.id)}"]`)?.focus();
  });
  return (id) => {
    // A mark that is taken out of the page is blurred too; it is then still the one that was focused.
    const there = surface.current?.querySelector(`[data-handle="${CSS.escape(focused.current ?? '')}"]`);
    if (id !== undefined || there) focused.current = id;
  };
}

const WAYS: Readonly<Record<string, readonly ['across' | 'up', 1 | -1]>> = {
  ArrowRight: ['across', 1],
  ArrowLeft: ['across', -1],
  ArrowUp: ['up', 1],
  ArrowDown: ['up', -1],
};

/** A handle with its values, as it is spoken: "Water level: above the base 16.5 cm". */
function spoken({ name, measures }: Handle, unit: LengthUnit): string {
  const values = measures.map(
    (measure) => `${measure.name.toLowerCase()} ${valueText(measure.value, measure.dimension, unit)}`,
  );
  return `${name}: ${values.join(', ')}`;
}

interface LeadersProps {
  readonly marks: readonly Mark[];
  readonly size: BoardMap;
  spotOf(id: string): { readonly x: number; readonly y: number };
  x(metres: number): number;
  y(metres: number): number;
}

/** From each mark that stepped aside a line to the place it stands for. */
function Leaders({ marks, spotOf, x, y, size }: LeadersProps) {
  const d = marks
    .map(({ handle: { id }, across, up }) => {
      const place = withinReach({ id, x: x(across), y: y(up) }, size);
      return { spot: spotOf(id), px: place.x, py: place.y };
    })
    .filter(({ spot, px, py }) => Math.hypot(spot.x - px, spot.y - py) > 3)
    .map(({ spot, px, py }) => `M${spot.x.toFixed(1)} ${spot.y.toFixed(1)}L${px.toFixed(1)} ${py.toFixed(1)}`)
    .join('');
  return (
    <svg className={styles.leaders} width={size.right + 10} height={size.bottom + 10} aria-hidden="true">
      <path d={d} />
    </svg>
  );
}

interface GuideProps {
  readonly axis: Axis;
  /** [px] */
  readonly at: number;
  readonly name: string;
  readonly map: BoardMap;
}

/** The line on which what is dragged lies with its neighbour. */
function Guide({ axis, at, name, map }: GuideProps) {
  const upright = axis === map.across;
  const style = upright
    ? { left: at, top: map.top, height: map.bottom - map.top }
    : { top: at, left: map.left, width: map.right - map.left };
  return (
    <div className={styles.guide} data-upright={upright} style={style} aria-hidden="true">
      <span>{name}</span>
    </div>
  );
}

interface TagProps {
  readonly mark: Mark | undefined;
  readonly map: BoardMap;
  readonly unit: LengthUnit;
}

/** What is held, and what it measures in this drawing. */
function Tag({ mark, map, unit }: TagProps) {
  if (!mark) return null;
  const { handle } = mark;
  const values = handle.measures
    .filter(({ drag }) => drag?.axis === map.across || drag?.axis === map.up)
    .map(({ value, dimension }) => valueText(value, dimension, unit));
  const px = map.left + mark.across * map.pixelsPerMetre;
  const py = map.bottom - mark.up * map.pixelsPerMetre;
  const toLeft = px > (map.left + map.right) / 2;
  const below = py < map.top + 46;
  return (
    <div
      className={styles.tag}
      data-left={toLeft}
      data-below={below}
      style={{ left: px, top: py }}
      aria-hidden="true"
    >
      {values.length > 0 ? values.join(' · ') : handle.name}
    </div>
  );
}
