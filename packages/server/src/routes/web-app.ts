import { existsSync } from 'node:fs';
import { join } from 'node:path';
import serveStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';

/** The built web app under /. Files with a hash in their name may be kept for ever, the page itself is asked for anew. */
export function webAppRoutes(folder: string): (app: FastifyInstance) => Promise<void> {
  return async (app) => {
    if (!existsSync(join(folder, 'index.html'))) {
      app.get('/', { schema: { hide: true } }, async (_, reply) =>
        reply.code(503).send({ message: 'The web app is not built yet. Run: npm run build' }),
      );
      return;
    }
    await app.register(serveStatic, {
      root: folder,
      dotfiles: 'ignore',
      cacheControl: false,
      schemaHide: true,
      setHeaders(response, path) {
        const hashed = path.includes('/assets/') || path.includes('\\assets\\');
        response.setHeader('cache-control', hashed ? 'public, max-age=31536000, immutable' : 'no-cache');
      },
    });
  };
}
