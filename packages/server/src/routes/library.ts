import { libraryListing, listLibrary } from '@shoreglass/contract';
import { library } from '@shoreglass/library';
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';

/** What an enclosure file may name: animals, plants, feeds, materials and waters that ship with the program. */
export async function libraryRoute(plain: FastifyInstance): Promise<void> {
  plain.withTypeProvider<ZodTypeProvider>().get(
    '/library',
    {
      schema: {
        summary: 'Names an enclosure file may use: animals, plants, feeds, materials, waters',
        response: { 200: libraryListing },
      },
    },
    async () => listLibrary(library),
  );
}
