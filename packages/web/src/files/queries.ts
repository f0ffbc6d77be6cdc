import type { EnclosureFile, EnclosureWrite } from '@shoreglass/contract';
import { QueryClient, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import {
  fetchEnclosure,
  fetchEnclosures,
  fetchLibrary,
  fetchLibraryEntry,
  Refused,
  saveEnclosure,
} from './server.ts';

export function queryClient(): QueryClient {
  return new QueryClient({
    defaultOptions: {
      queries: {
        networkMode: 'always',
        staleTime: 10_000,
        retry: (failures, error) => !(error instanceof Refused) && failures < 1,
        retryDelay: 400,
      },
      mutations: { networkMode: 'always' },
    },
  });
}

export function useEnclosures() {
  return useQuery({ queryKey: ['enclosures'], queryFn: ({ signal }) => fetchEnclosures(signal) });
}

export function useEnclosure(id: string) {
  return useQuery({ queryKey: ['enclosure', id], queryFn: ({ signal }) => fetchEnclosure(id, signal) });
}

/** The library does not change while the server runs. */
export function useLibrary() {
  return useQuery({
    queryKey: ['library'],
    queryFn: ({ signal }) => fetchLibrary(signal),
    staleTime: Number.POSITIVE_INFINITY,
  });
}

export function useLibraryEntry(kind: string, id: string) {
  return useQuery({
    queryKey: ['library', kind, id],
    queryFn: ({ signal }) => fetchLibraryEntry(kind, id, signal),
    staleTime: Number.POSITIVE_INFINITY,
  });
}

interface Saving extends EnclosureWrite {
  readonly id: string;
}

/** Saves a text; what the server kept becomes what every place shows. */
export function useSaveEnclosure() {
  const client = useQueryClient();
  return useMutation<EnclosureFile, Error, Saving>({
    mutationFn: ({ id, ...write }) => saveEnclosure(id, write),
    onSuccess(file) {
      client.setQueryData(['enclosure', file.id], file);
      void client.invalidateQueries({ queryKey: ['plate', file.id] });
      return client.invalidateQueries({ queryKey: ['enclosures'] });
    },
  });
}
