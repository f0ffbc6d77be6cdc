import { Link } from 'wouter';
import { Frame } from './frame.tsx';

export function NowherePlace() {
  return (
    <Frame title="Nothing here">
      <p>
        There is no such place. <Link href="/enclosures">Go to the enclosures</Link>.
      </p>
    </Frame>
  );
}
