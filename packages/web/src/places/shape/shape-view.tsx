import type { EnclosureFile, Finding } from '@shoreglass/contract';
import { useCallback, useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { useStore } from 'zustand';
import { useWidth } from '../../drawing/use-width.ts';
import type { SoundShape } from '../../worker/shape-orders.ts';
import type { BoardActions } from './boards/board-actions.ts';
import { PlanBoard } from './boards/plan-board.tsx';
import { SectionBoard } from './boards/section-board.tsx';
import { type Concern, concernsOf } from './desk/concerns.ts';
import { deedsFor } from './desk/deeds.ts';
import { HandPanel } from './desk/hand-panel.tsx';
import { handlesOf, moveBy, moveTo } from './desk/moves.ts';
import { SaveBar } from './desk/save-bar.tsx';
import type { Command, Desk } from './desk/shape-desk-store.ts';
import { ToolBar } from './desk/tool-bar.tsx';
import { useUnit } from './desk/units.ts';
import { amountsIn } from './figures/amounts.ts';
import { cautionsAbout } from './figures/cautions-at.ts';
import { ConcernList } from './figures/concern-list.tsx';
import { KeyFigures } from './figures/key-figures.tsx';
import { GROUPS } from './handles/all-handles.ts';
import { type Handle, type HandleGroup, handleNamed } from './handles/handle.ts';
import { ShapeSheetView } from './shape-sheet-view.tsx';
import styles from './shape-view.module.css';
import { SolidPanel } from './solid/solid-panel.tsx';

interface ShapeViewProps {
  readonly file: EnclosureFile;
  readonly desk: Desk;
  /** As it is, or as it would be if what is dragged were let go. */
  readonly shape: SoundShape;
  readonly findings: readonly Finding[];
  /** As it was before anything was dragged. */
  readonly settled: SoundShape;
  readonly onMoved: (id: string) => void;
}

type Shown = HandleGroup | 'all';

/** Both drawings with their handles, what is in the hand, the body, and every figure of the shape. */
export function ShapeView({ file, desk, shape, findings, settled, onMoved }: ShapeViewProps) {
  const unit = useUnit((state) => state.unit);
  const refusal = useStore(desk, (state) => state.refusal);
  const [selectedId, setSelectedId] = useState<string>();
  const [shown, setShown] = useState<Shown>(() => (innerWidth > 760 ? 'all' : 'ground'));
  const [snap, setSnap] = useState(true);
  const firstField = useRef<HTMLInputElement>(null);
  const [host, width] = useWidth<HTMLDivElement>();
  const handles = useMemo(() => handlesOf(shape), [shape]);
  const selected = handleNamed(handles, selectedId);
  const concerns = useMemo(() => concernsOf(shape, findings, handles), [shape, findings, handles]);
  const amounts = useMemo(() => amountsIn(unit), [unit]);
  // While the hand moves the drawings come first; the body and the long sheet follow as fast as they can.
  const followed = useDeferredValue(shape);
  useUndoKeys(desk);

  const select = (handle: Handle) => {
    setSelectedId(handle.id);
    setShown((now) =>
      now === 'all' || now === handle.group || handle.group === 'water' ? now : handle.group,
    );
  };
  const type = (handle: Handle) => {
    // The field belongs to the new selection; it is drawn and focused at once, so that a key typed next goes into it.
    flushSync(() => select(handle));
    firstField.current?.focus();
  };
  const openCover = useCallback(
    (open: number) =>
      desk.run({
        words: 'Cover, open part',
        about: 'cover',
        edits: () => [{ path: ['cover', 'open'], value: `${Number((open * 100).toFixed(1))} %` }],
      }),
    [desk],
  );
  const actions: BoardActions = {
    handles,
    shown: handles.filter(({ group }) => shown === 'all' || group === shown || group === 'water'),
    selected,
    concerned: useMemo(
      () =>
        new Set(
          concerns.flatMap(({ handle, severity }) => (handle && severity !== 'note' ? [handle.id] : [])),
        ),
      [concerns],
    ),
    unit,
    snap,
    onSelect: select,
    onDrag: (handle, place) => desk.look(moveTo(handle, place, unit)),
    onDrop: (handle, place) => (place ? desk.run(moveTo(handle, place, unit)) : desk.lookAway()),
    onStep: (handle, axis, by) => desk.run(moveBy({ id: handle.id, words: handle.name, axis, by }, unit)),
    onType: type,
  };
  const columns = width >= 760 ? 2 : 1;
  const boardWidth = columns === 2 ? Math.floor((width - 24) / 2) : width;
  return (
    <div className={styles.shape}>
      <PrintHead file={file} unit={unit} />
      <div className={styles.tools}>
        <ToolBar desk={desk} snap={snap} onSnap={setSnap} />
        <SaveBar file={file} desk={desk} onMoved={onMoved} />
      </div>
      <div className={styles.figures}>
        <KeyFigures sheet={shape.sheet} amounts={amounts} />
      </div>
      <GroupChoice handles={handles} shown={shown} onShow={setShown} />
      <div ref={host} className={styles.measure} />
      <div className={styles.boards} data-columns={columns}>
        {boardWidth > 0 && (
          <>
            <figure>
              <SectionBoard shape={shape} width={boardWidth} {...actions} />
              <figcaption>Section, cut along the middle and seen from the front</figcaption>
            </figure>
            <figure>
              <PlanBoard shape={shape} width={boardWidth} {...actions} />
              <figcaption>Plan, from above, the front pane below</figcaption>
            </figure>
          </>
        )}
      </div>
      <div className={styles.hand}>
        <HandPanel
          handles={handles}
          selected={selected}
          unit={unit}
          refusal={refusal}
          findingsAt={findingsAt(concerns)}
          firstField={firstField}
          deeds={deedsFor(selected, shape.content, unit)}
          cautions={cautionsAbout(shape.sheet, selected)}
          onSelect={(id) => {
            const handle = handleNamed(handles, id);
            if (handle) select(handle);
            // A part that has just been added is in the hand as soon as it is there.
            else setSelectedId(id === '' ? undefined : id);
          }}
          onCommand={(command: Command) => desk.run(command)}
        />
        <KeyHelp />
      </div>
      <div className={styles.below}>
        <SolidPanel shape={followed} />
        <ConcernList concerns={concerns} onTake={type} />
      </div>
      <ShapeSheetView shape={followed} settled={settled} amounts={amounts} onOpen={openCover} />
    </div>
  );
}

/** Stands over the printed sheet only. */
function PrintHead({ file, unit }: { readonly file: EnclosureFile; readonly unit: string }) {
  return (
    <p className={styles.printHead}>
      <strong>{file.name}</strong>: its shape and what it comes to. {file.id}.yaml,{' '}
      {new Date().toLocaleDateString()}; lengths in {unit}.
    </p>
  );
}

/** Sentences by the measure they are about. */
function findingsAt(concerns: readonly Concern[]): ReadonlyMap<string, readonly Concern[]> {
  const found = new Map<string, Concern[]>();
  for (const concern of concerns) {
    if (!concern.handle || !concern.measure) continue;
    const key = `${concern.handle.id} ${concern.measure.id}`;
    found.set(key, [...(found.get(key) ?? []), concern]);
  }
  return found;
}

interface GroupChoiceProps {
  readonly handles: readonly Handle[];
  readonly shown: Shown;
  readonly onShow: (shown: Shown) => void;
}

/** Which marks the drawings carry; the water's are always there. */
function GroupChoice({ handles, shown, onShow }: GroupChoiceProps) {
  const marked = (group: HandleGroup) =>
    handles.some((handle) => handle.group === group && (handle.inSection || handle.inPlan));
  const groups: readonly { group: Shown; name: string }[] = [
    { group: 'all', name: 'Everything' },
    ...GROUPS.filter(({ group }) => group !== 'water' && marked(group)),
  ];
  return (
    <fieldset className={styles.groups}>
      <legend>Marks in the drawings</legend>
      {groups.map(({ group, name }) => (
        <label key={group}>
          <input type="radio" name="marks" checked={group === shown} onChange={() => onShow(group)} />
          <span>{name}</span>
        </label>
      ))}
    </fieldset>
  );
}

function KeyHelp() {
  return (
    <details className={styles.help}>
      <summary>Hands and keys</summary>
      <ul>
        <li>Drag a mark; with Alt held, or the grid off, it moves freely, by the millimetre.</li>
        <li>Tab goes from mark to mark, arrow keys move it one step, with Shift a fine one.</li>
        <li>Enter goes to its numbers; any unit of length may be typed. Escape lets go.</li>
        <li>Ctrl Z undoes, Ctrl Shift Z does it again.</li>
      </ul>
    </details>
  );
}

/** Ctrl or Cmd with Z and Y, unless something is being typed. */
function useUndoKeys(desk: Desk): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const typing =
        event.target instanceof HTMLInputElement && event.target.value !== event.target.defaultValue;
      if (typing) return;
      const key = event.key.toLowerCase();
      if (key === 'z' && !event.shiftKey) desk.undo();
      else if ((key === 'z' && event.shiftKey) || key === 'y') desk.redo();
      else return;
      event.preventDefault();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, [desk]);
}
