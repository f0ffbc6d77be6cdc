import type { AheadDocument, LifeDocument, Plan } from '@shoreglass/engine';
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { Trouble } from '../../app/trouble.tsx';
import { OutlookGate } from '../sheets/outlook-gate.tsx';
import type { SheetProps } from '../sheets/sheet-props.ts';
import { useCommunity } from './use-community.ts';

/** What a sheet of the community is drawn from. */
export interface Community {
  readonly document: AheadDocument;
  readonly plan: Plan;
  readonly life: LifeDocument;
}

interface CommunityGateProps extends SheetProps {
  readonly children: (community: Community) => ReactNode;
}

/** What needs the community of the expected run: waits for it, and says so where nobody lives here. */
export function CommunityGate({ children, ...sheet }: CommunityGateProps) {
  return (
    <OutlookGate {...sheet}>
      {(document, plan) => (
        <WithCommunity {...sheet} document={document} plan={plan}>
          {children}
        </WithCommunity>
      )}
    </OutlookGate>
  );
}

interface WithCommunityProps extends CommunityGateProps {
  readonly document: AheadDocument;
  readonly plan: Plan;
}

function WithCommunity({ file, document, plan, children }: WithCommunityProps) {
  const { data, error, refetch } = useCommunity(file, plan);
  if (plan.populations.length === 0)
    return (
      <p>
        No animals live here yet. <Link href={`/life/${file.id}/who`}>Bring somebody in</Link>
      </p>
    );
  if (error) return <Trouble error={error} again={() => void refetch()} />;
  if (!data) return <p role="status">Adding up who eats what …</p>;
  return <>{children({ document, plan, life: data })}</>;
}
