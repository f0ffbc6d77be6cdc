import { Redirect, Route, Router, Switch } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { AheadPlace } from '../places/ahead/ahead-place.tsx';
import { EnclosuresPlace } from '../places/enclosures/enclosures-place.tsx';
import { lastOpened } from './last-opened.ts';
import { Later, later } from './later.tsx';
import { NowherePlace } from './nowhere-place.tsx';

const ShapePlace = later(async () => (await import('../places/shape/shape-place.tsx')).ShapePlace);
const WaterPlace = later(async () => (await import('../places/water/water-place.tsx')).WaterPlace);
const LifePlace = later(async () => (await import('../places/life/life-place.tsx')).LifePlace);
const NewTextPlace = later(
  async () => (await import('../places/enclosures/new-text-place.tsx')).NewTextPlace,
);
const TextPlace = later(async () => (await import('../places/enclosures/text-place.tsx')).TextPlace);
const LibraryPlace = later(async () => (await import('../places/library/library-place.tsx')).LibraryPlace);
const EntryPlace = later(async () => (await import('../places/library/entry-place.tsx')).EntryPlace);
const CautionsPlace = later(
  async () => (await import('../places/cautions/cautions-place.tsx')).CautionsPlace,
);

/** Every place of the app and the address it answers to. */
export function App() {
  return (
    <Router hook={useHashLocation}>
      <Later>
        <Switch>
          <Route path="/">
            <Redirect to={lastOpened() ? `/ahead/${lastOpened()}` : '/enclosures'} replace />
          </Route>
          <Route path="/shape/:id">{({ id }) => <ShapePlace key={id} id={id} />}</Route>
          <Route path="/ahead/:id">{({ id }) => <AheadPlace key={id} id={id} />}</Route>
          <Route path="/water/:id/:part?">
            {({ id, part }) => <WaterPlace key={id} id={id} part={part} />}
          </Route>
          <Route path="/life/:id/:part?">
            {({ id, part }) => <LifePlace key={id} id={id} part={part} />}
          </Route>
          <Route path="/enclosures">
            <EnclosuresPlace />
          </Route>
          <Route path="/enclosures/new">
            <NewTextPlace />
          </Route>
          <Route path="/enclosures/:id">{({ id }) => <TextPlace key={id} id={id} />}</Route>
          <Route path="/library">
            <LibraryPlace />
          </Route>
          <Route path="/library/:kind/:id">
            {({ kind, id }) => <EntryPlace key={`${kind}/${id}`} kind={kind} id={id} />}
          </Route>
          <Route path="/cautions">
            <CautionsPlace />
          </Route>
          <Route>
            <NowherePlace />
          </Route>
        </Switch>
      </Later>
    </Router>
  );
}
