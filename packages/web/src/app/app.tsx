import { Redirect, Route, Router, Switch } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { AheadPlace } from '../places/ahead/ahead-place.tsx';
import { CautionsPlace } from '../places/cautions/cautions-place.tsx';
import { EnclosuresPlace } from '../places/enclosures/enclosures-place.tsx';
import { NewTextPlace } from '../places/enclosures/new-text-place.tsx';
import { TextPlace } from '../places/enclosures/text-place.tsx';
import { EntryPlace } from '../places/library/entry-place.tsx';
import { LibraryPlace } from '../places/library/library-place.tsx';
import { LifePlace } from '../places/life/life-place.tsx';
import { ShapePlace } from '../places/shape/shape-place.tsx';
import { WaterPlace } from '../places/water/water-place.tsx';
import { lastOpened } from './last-opened.ts';
import { NowherePlace } from './nowhere-place.tsx';

/** Every place of the app and the address it answers to. */
export function App() {
  return (
    <Router hook={useHashLocation}>
      <Switch>
        <Route path="/">
          <Redirect to={lastOpened() ? `/ahead/${lastOpened()}` : '/enclosures'} replace />
        </Route>
        <Route path="/shape/:id">{({ id }) => <ShapePlace key={id} id={id} />}</Route>
        <Route path="/ahead/:id">{({ id }) => <AheadPlace key={id} id={id} />}</Route>
        <Route path="/water/:id/:part?">
          {({ id, part }) => <WaterPlace key={id} id={id} part={part} />}
        </Route>
        <Route path="/life/:id/:part?">{({ id, part }) => <LifePlace key={id} id={id} part={part} />}</Route>
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
    </Router>
  );
}
