export { type AccountPolicy, databaseAccount } from './account/account.js';
export { accountPolicy } from './embedded.js';
export { dataFolder, type Purpose } from './folder/default-folder.js';
export { type Answer, askKeeper, type Holder } from './keeper/control-socket.js';
export { findKeeper, type HolderNote } from './keeper/holder-file.js';
export type { Keeper } from './keeper/keeper.js';
export { type DatabaseKind, type DatabaseOptions, type OpenDatabase, openDatabase } from './open-database.js';
export { DatabaseProblem, type DatabaseProblemCode } from './problem.js';
