export type { Settings, Told } from '@evenfall/api';
export { DatabaseProblem } from './database/problem.js';
export { createApi } from './http/app.js';
export { openApiDocument } from './http/openApi.js';
export type { World } from './http/world.js';
