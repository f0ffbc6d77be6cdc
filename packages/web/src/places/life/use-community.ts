import type { EnclosureFile } from '@shoreglass/contract';
import type { LifeDocument, Plan } from '@shoreglass/engine';
import { useQuery } from '@tanstack/react-query';
import { communityOf } from '../../engine-client.ts';
import { useRunChoice } from '../../outlook/run-choice.ts';

/** Who eats what, births, deaths and what each food carries, by the expected run; worked out once for a text. */
export function useCommunity(file: EnclosureFile, plan: Plan) {
  const { days, seed } = useRunChoice((state) => state.run);
  return useQuery<LifeDocument>({
    queryKey: ['community', file.id, file.version, days, seed],
    queryFn: () => communityOf(plan, { days, seed }),
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  });
}
