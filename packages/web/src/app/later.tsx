import {
  Component,
  type ComponentType,
  type LazyExoticComponent,
  lazy,
  type ReactNode,
  Suspense,
} from 'react';
import { useLocation } from 'wouter';
import { ServerGone } from '../files/server.ts';
import { Frame } from './frame.tsx';
import { Trouble } from './trouble.tsx';

/** A place whose code is fetched when it is gone to for the first time. */
export function later<Props extends object>(
  fetch: () => Promise<ComponentType<Props>>,
): LazyExoticComponent<ComponentType<Props>> {
  return lazy(() =>
    fetch().then(
      (place) => ({ default: place }),
      () => {
        throw new ServerGone('This place cannot be opened: the Shoreglass server does not answer.');
      },
    ),
  );
}

/** What stands there while the code of a place is fetched, and where it cannot be had. */
export function Later({ children }: { readonly children: ReactNode }) {
  const [location] = useLocation();
  return (
    <Fetched location={location}>
      <Suspense
        fallback={
          <Frame title="Opening …">
            <p role="status">Opening the place …</p>
          </Frame>
        }
      >
        {children}
      </Suspense>
    </Fetched>
  );
}

interface FetchedProps {
  readonly location: string;
  readonly children: ReactNode;
}

interface FetchedState {
  readonly error: Error | undefined;
}

class Fetched extends Component<FetchedProps, FetchedState> {
  override state: FetchedState = { error: undefined };

  static getDerivedStateFromError(error: Error): FetchedState {
    return { error };
  }

  override componentDidUpdate({ location }: FetchedProps) {
    if (this.state.error && location !== this.props.location) this.setState({ error: undefined });
  }

  override render() {
    const { error } = this.state;
    if (!error) return this.props.children;
    return (
      <Frame title="Shoreglass">
        <Trouble error={error} again={() => window.location.reload()} />
      </Frame>
    );
  }
}
