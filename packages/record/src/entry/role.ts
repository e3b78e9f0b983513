import { z } from 'zod';

/** What an agent was in one act. A role belongs to the act, never to the agent. */
export const ROLES = ['observer', 'supervisor', 'teacher', 'assessor', 'importer'] as const;
export const role = z.enum(ROLES);
export type Role = z.infer<typeof role>;
