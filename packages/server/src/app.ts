import helmet from '@fastify/helmet';
import swagger from '@fastify/swagger';
import { MAX_ENCLOSURE_BYTES } from '@shoreglass/contract';
import Fastify, { type FastifyError, type FastifyInstance } from 'fastify';
import {
  hasZodFastifySchemaValidationErrors,
  jsonSchemaTransform,
  serializerCompiler,
  validatorCompiler,
} from 'fastify-type-provider-zod';
import { enclosureRoutes } from './routes/enclosures.ts';
import { libraryRoute } from './routes/library.ts';
import { openApiRoute } from './routes/open-api.ts';
import { roomRoutes } from './routes/rooms.ts';
import { webAppRoutes } from './routes/web-app.ts';
import { CONTENT_POLICY } from './security/content-policy.ts';
import { guardHost } from './security/host-guard.ts';
import { enclosureStore } from './store/enclosure-store.ts';
import { roomFiles } from './store/room-files.ts';

export interface AppOptions {
  /** Name or address listened on; decides which Host headers pass. */
  readonly host: string;
  readonly dataFolder: string;
  /** Texts of the examples by id. */
  readonly examples: Readonly<Record<string, string>>;
  readonly webFolder: string;
  /** Told of failures that a request cannot be blamed for. */
  readonly log: (line: string) => void;
}

/** JSON may spell one byte of text with six; anything longer is refused before it is read. */
const BODY_LIMIT = MAX_ENCLOSURE_BYTES * 6 + 1024;

/** The whole server, not yet listening. */
export async function buildApp(options: AppOptions): Promise<FastifyInstance> {
  const app = Fastify({ bodyLimit: BODY_LIMIT, forceCloseConnections: true });
  app.setValidatorCompiler(validatorCompiler);
  app.setSerializerCompiler(serializerCompiler);
  answerErrors(app, options.log);
  guardHost(app, options.host);
  await app.register(helmet, CONTENT_POLICY);
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Shoreglass',
        version: '0.1.0',
        description: 'Enclosure files of one keeper. Nothing is sent anywhere else.',
      },
    },
    transform: jsonSchemaTransform,
  });
  const store = enclosureStore({ folder: options.dataFolder, examples: options.examples });
  const readBeside = roomFiles(options.dataFolder);
  await app.register(enclosureRoutes(store, readBeside), { prefix: '/api' });
  await app.register(roomRoutes(readBeside), { prefix: '/api' });
  await app.register(libraryRoute, { prefix: '/api' });
  await app.register(openApiRoute, { prefix: '/api' });
  await app.register(webAppRoutes(options.webFolder));
  return app;
}

function answerErrors(app: FastifyInstance, log: (line: string) => void): void {
  app.setErrorHandler<FastifyError>((error, request, reply) => {
    if (hasZodFastifySchemaValidationErrors(error)) {
      const places = error.validation.map(
        ({ instancePath, message }) => `${instancePath || '/'}: ${message}`,
      );
      return reply.code(400).send({ message: `The request does not fit. ${places.join('; ')}` });
    }
    const status = error.statusCode ?? 500;
    if (status < 500) return reply.code(status).send({ message: error.message });
    log(`${request.method} ${request.url} failed: ${error.stack ?? error.message}`);
    return reply.code(500).send({ message: 'The server could not do this. Nothing was changed.' });
  });
  app.setNotFoundHandler((request, reply) =>
    reply.code(404).send({ message: `There is nothing at ${request.url.split('?')[0]}.` }),
  );
}
