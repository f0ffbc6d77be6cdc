import { type ReadBeside, refusal, roomFile, roomFileName } from '@shoreglass/contract';
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';

/** Measured rooms that enclosure files name by a CSV file beside them. */
export function roomRoutes(readBeside: ReadBeside): (app: FastifyInstance) => Promise<void> {
  return async (plain) => {
    plain.withTypeProvider<ZodTypeProvider>().get(
      '/rooms/:name',
      {
        schema: {
          summary: 'The text of a room series in the data folder',
          params: z.object({ name: roomFileName }),
          response: { 200: roomFile, 400: refusal, 404: refusal },
        },
      },
      async ({ params: { name } }, reply) => {
        const text = readBeside(name);
        if (text === undefined)
          return reply.code(404).send({ message: `There is no room series "${name}" in the data folder.` });
        return { name, text };
      },
    );
  };
}
