import {
  enclosureFile,
  enclosureId,
  enclosureList,
  enclosureWrite,
  type LocatedFinding,
  MAX_ENCLOSURE_BYTES,
  type ReadBeside,
  refusal,
  refusalWithFindings,
} from '@shoreglass/contract';
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { describeEnclosure } from '../reading/describe-enclosure.ts';
import type { EnclosureStore, StoredEnclosure } from '../store/enclosure-store.ts';

const params = z.object({ id: enclosureId });

/** List, read and keep enclosure files. The text is the truth: it is stored as sent, comments and all. */
export function enclosureRoutes(
  store: EnclosureStore,
  readBeside: ReadBeside,
): (app: FastifyInstance) => Promise<void> {
  return async (plain) => {
    const app = plain.withTypeProvider<ZodTypeProvider>();

    app.get(
      '/enclosures',
      {
        schema: {
          summary: 'Every enclosure: own files first, then the examples',
          response: { 200: enclosureList },
        },
      },
      async () => {
        const { enclosures, leftOut } = await store.list();
        return { enclosures: enclosures.map((each) => entryOf(each, readBeside)), leftOut: [...leftOut] };
      },
    );

    app.get(
      '/enclosures/:id',
      {
        schema: {
          summary: 'One enclosure: its text and what is found in it',
          params,
          response: { 200: enclosureFile, 400: refusal, 404: refusal },
        },
      },
      async (request, reply) => {
        const enclosure = await store.get(request.params.id);
        if (!enclosure)
          return reply.code(404).send({ message: `There is no enclosure "${request.params.id}".` });
        return fileOf(enclosure, readBeside);
      },
    );

    app.put(
      '/enclosures/:id',
      {
        schema: {
          summary: 'Keep a text; one with errors is refused and the file stays as it was',
          params,
          body: enclosureWrite,
          response: {
            200: enclosureFile,
            400: refusal,
            409: refusal,
            413: refusal,
            422: refusalWithFindings,
          },
        },
      },
      async (request, reply) => {
        const { id } = request.params;
        const { text, basedOn } = request.body;
        if (Buffer.byteLength(text, 'utf8') > MAX_ENCLOSURE_BYTES)
          return reply.code(413).send({ message: 'The text is longer than 256 kB. Nothing was changed.' });
        const { findings } = describeEnclosure({ id, text }, readBeside);
        if (errorsIn(findings) > 0)
          return reply.code(422).send({ message: 'The text has errors. Nothing was changed.', findings });
        const result = await store.write(id, text, basedOn);
        if (result.kind === 'written') return fileOf(result.enclosure, readBeside);
        return reply.code(409).send({ message: WHY_NOT[result.kind] });
      },
    );
  };
}

const WHY_NOT = {
  'is an example': 'Examples stay as they are. Save it under another name.',
  'exists already': 'There is already an enclosure of this name. Save it under another name.',
  'changed meanwhile': 'The file was changed elsewhere since it was opened. Nothing was overwritten.',
} as const;

function entryOf(enclosure: StoredEnclosure, readBeside: ReadBeside) {
  const { name, findings } = describeEnclosure(enclosure, readBeside);
  const errors = errorsIn(findings);
  return { id: enclosure.id, name, origin: enclosure.origin, errors, remarks: findings.length - errors };
}

function fileOf(enclosure: StoredEnclosure, readBeside: ReadBeside) {
  const { id, origin, text, version } = enclosure;
  const { name, findings } = describeEnclosure(enclosure, readBeside);
  return { id, name, origin, text, version, findings };
}

function errorsIn(findings: readonly LocatedFinding[]): number {
  return findings.filter(({ severity }) => severity === 'blocking').length;
}
