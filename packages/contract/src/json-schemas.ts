import { ENTRY_SCHEMAS } from '@shoreglass/library';
import { z } from 'zod';
import { countsDocumentSchema } from './counts/counts-document.ts';
import { enclosureSchema } from './enclosure/schema/enclosure.ts';
import { aheadDocumentSchema } from './outlook/ahead-document.ts';
import { lifeDocumentSchema } from './outlook/life-document.ts';
import { lifeTableSchema } from './outlook/life-table-document.ts';
import { waterDocumentSchema } from './outlook/water-document.ts';
import { shapeDocumentSchema } from './shape/shape-document.ts';
import { recipesDocumentSchema } from './water/recipe-document-schema.ts';

/** @param reused parts that stand in many places are written out each time, or once and referred to */
function schemaText(
  schema: z.ZodType,
  title: string,
  io: 'input' | 'output',
  reused: 'inline' | 'ref' = 'inline',
): string {
  const { $schema, ...rest } = z.toJSONSchema(schema, { target: 'draft-2020-12', io, reused });
  return `${JSON.stringify({ $schema, title, ...rest }, null, 2)}\n`;
}

/** JSON Schema 2020-12 of what people write and read, by file name. */
export function jsonSchemas(): Readonly<Record<string, string>> {
  return {
    'enclosure.schema.json': schemaText(enclosureSchema, 'Enclosure file', 'input'),
    'animal.schema.json': schemaText(ENTRY_SCHEMAS.organisms, 'Animal of the library', 'input', 'ref'),
    'plant.schema.json': schemaText(ENTRY_SCHEMAS.plants, 'Plant of the library', 'input', 'ref'),
    'ahead.schema.json': schemaText(aheadDocumentSchema, 'Outlook document', 'output'),
    'life.schema.json': schemaText(lifeDocumentSchema, 'Life document', 'output'),
    'life-table.schema.json': schemaText(lifeTableSchema, 'Life table', 'output'),
    'counts.schema.json': schemaText(countsDocumentSchema, 'Counts document', 'output', 'ref'),
    'water.schema.json': schemaText(waterDocumentSchema, 'Water document', 'output'),
    'shape.schema.json': schemaText(shapeDocumentSchema, 'Shape document', 'output'),
    'recipes.schema.json': schemaText(recipesDocumentSchema, 'Recipes document', 'output'),
  };
}
