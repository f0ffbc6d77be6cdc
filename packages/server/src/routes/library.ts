import {
  aloneOf,
  libraryEntry,
  libraryKind,
  libraryListing,
  listLibrary,
  refusal,
} from '@shoreglass/contract';
import { entryPage, library } from '@shoreglass/library';
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';

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
  plain.withTypeProvider<ZodTypeProvider>().get(
    '/library/:kind/:id',
    {
      schema: {
        summary: 'One entry of the library: what it is, what it needs, every value with its source',
        params: z.object({ kind: libraryKind, id: z.string().max(80) }),
        response: { 200: libraryEntry, 404: refusal },
      },
    },
    async ({ params: { kind, id } }, reply) => {
      const page = entryPage(library.data, kind, id);
      if (!page) return reply.code(404).send({ message: `The library holds no ${kind} named '${id}'.` });
      const animal = kind === 'organisms' ? library.organism(id) : undefined;
      return libraryEntry.parse({ ...page, ...(animal ? { alone: aloneOf(animal) } : {}) });
    },
  );
}
