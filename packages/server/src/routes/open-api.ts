import type { FastifyInstance } from 'fastify';

/** GET /api/openapi.json: the description of every other route. */
export async function openApiRoute(app: FastifyInstance): Promise<void> {
  app.get('/openapi.json', { schema: { hide: true } }, async () => app.swagger());
}
