import type { ShelfWater } from '@shoreglass/contract';
import { useEffect, useMemo, useState } from 'react';
import { analyse } from '../../../engine-client.ts';
import type { Shelf } from '../../../worker/messages.ts';
import desk from '../../sheets/desk.module.css';
import type { SheetProps } from '../../sheets/sheet-props.ts';
import { useUnits } from '../amount/remembered-units.ts';
import { useShelf } from '../use-shelf.ts';
import { usePoolNow, usePoolWater } from './pool-now.tsx';
import { firstDesk, type RecipeDesk, recallDesk, rememberDesk, requestOf } from './recipe-desk.ts';
import styles from './recipe-part.module.css';
import { RecipeResult } from './recipe-result.tsx';
import { SaltsChoice } from './salts-choice.tsx';
import { Targets } from './targets.tsx';
import { useRecipes } from './use-recipes.ts';
import { WatersChoice } from './waters-choice.tsx';

/** Which waters and salts, how much of what; and beside it the recipe, worked out as one types. */
export function RecipePart({ file, outlook }: SheetProps) {
  const { shelf, failure } = useShelf(file);
  if (failure !== undefined) return <p role="alert">{failure}</p>;
  if (!shelf) return <p role="status">Looking through the shelf …</p>;
  const volume = outlook?.document?.series.waterVolume?.expected[0];
  // Before the expected run is there the volume is not known; the desk is laid out once it is, or failed.
  if (volume === undefined && !outlook?.failure && !recallDesk(file.id))
    return <p role="status">Measuring the water …</p>;
  return <Desk file={file} outlook={outlook} shelf={shelf} volume={volume} />;
}

interface DeskProps extends SheetProps {
  readonly shelf: Shelf;
  readonly volume: number | undefined;
}

function Desk({ file, outlook, shelf, volume }: DeskProps) {
  const [laid, setLaid] = useState(
    () => recallDesk(file.id) ?? firstDesk(shelf, volume, useUnits.getState().units),
  );
  const typed = useTypedWaters(laid.reports);
  const waters = useMemo(() => [...shelf.waters, ...typed], [shelf, typed]);
  const room = outlook?.plan?.room;
  const pools = usePoolNow(file.id, outlook?.document);
  const now = pools.find(({ source, known }) => known && source === (laid.keptFrom ?? 'fill')) ?? pools[0];
  const pool = usePoolWater(now, outlook?.plan);
  const asked = useMemo(
    () => requestOf({ desk: laid, waters, shelf, room, pool }),
    [laid, waters, shelf, room, pool],
  );
  const request = 'waits' in asked ? undefined : asked;
  const answer = useRecipes(request);
  const change = (part: Partial<RecipeDesk>) => {
    const next = { ...laid, ...part };
    setLaid(next);
    rememberDesk(file.id, next);
  };
  return (
    <div className={desk.columns}>
      <form className={styles.form} onSubmit={(event) => event.preventDefault()}>
        <Targets laid={laid} shelf={shelf} volume={volume} pools={pools} onChange={change} />
        <WatersChoice laid={laid} waters={waters} onChange={change} />
        <SaltsChoice laid={laid} shelf={shelf} onChange={change} />
      </form>
      <RecipeResult
        file={file}
        plan={outlook?.plan}
        pools={pools}
        stays={request?.kept && { ...request.kept, of: request.volume, source: now?.source ?? 'fill' }}
        shelf={shelf}
        waters={waters}
        answer={answer}
        waits={'waits' in asked ? asked.waits : undefined}
      />
    </div>
  );
}

const NO_WATERS: readonly ShelfWater[] = [];

/** The water reports typed at the desk, read in the worker; what cannot be read takes no part. */
function useTypedWaters(reports: RecipeDesk['reports']): readonly ShelfWater[] {
  const [waters, setWaters] = useState(NO_WATERS);
  useEffect(() => {
    let current = true;
    Promise.all(reports.map((report) => analyse(report))).then((read) => {
      if (current) setWaters(read.flatMap(({ water }) => (water ? [water] : [])));
    });
    return () => {
      current = false;
    };
  }, [reports]);
  return waters;
}
