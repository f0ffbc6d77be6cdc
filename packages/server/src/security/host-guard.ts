import { isIP } from 'node:net';
import type { FastifyInstance } from 'fastify';

const LOOPBACK_NAMES: ReadonlySet<string> = new Set(['localhost', '127.0.0.1', '::1']);

/** True for an address that only this machine can reach. */
export function isLoopback(host: string): boolean {
  return LOOPBACK_NAMES.has(host) || (isIP(host) === 4 && host.startsWith('127.'));
}

/**
 * Whether a Host header names this server. A page elsewhere that points its own name at this machine (DNS rebinding)
 * still sends its own name, so only loopback names, the name listened on and, beyond loopback, bare addresses pass.
 */
export function isOwnHost(header: string | undefined, listeningOn: string): boolean {
  const name = hostName(header);
  if (name === undefined) return false;
  if (isLoopback(name) || name === listeningOn.toLowerCase()) return true;
  return !isLoopback(listeningOn) && isIP(name) !== 0;
}

/** Refuses requests for another host, and changes asked for by a page of another origin. */
export function guardHost(app: FastifyInstance, listeningOn: string): void {
  app.addHook('onRequest', async (request, reply) => {
    const { host, origin } = request.headers;
    if (!isOwnHost(host, listeningOn))
      return reply.code(403).send({ message: 'This server answers only under its own address.' });
    if (origin !== undefined && hostOfOrigin(origin) !== host)
      return reply.code(403).send({ message: 'This server answers only its own pages.' });
  });
}

function hostName(header: string | undefined): string | undefined {
  const match = /^(?:\[([0-9a-f:.]+)\]|([a-z0-9.-]+))(?::\d{1,5})?$/i.exec(header ?? '');
  return (match?.[1] ?? match?.[2])?.toLowerCase();
}

function hostOfOrigin(origin: string): string | undefined {
  return URL.canParse(origin) ? new URL(origin).host : undefined;
}
