export { DatabaseProblem } from './database/problem.js';
export { createApi, type World } from './http/app.js';
export { openApiDocument } from './http/openApi.js';
export type { Settings, Told } from './start/settings.js';
