import { z } from 'zod';
import { anyQuantity } from './quantity.ts';

/** Parameters of one process of the engine; keys and units are the process's own. */
export const parametersSchema = z.strictObject({
  process: z.string().min(2),
  about: z.string().min(3).optional(),
  parameters: z.record(z.string(), anyQuantity),
});

export type ProcessParameters = z.infer<typeof parametersSchema>;
