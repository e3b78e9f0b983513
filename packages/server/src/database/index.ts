export { type AccountPolicy, databaseAccount } from './account/account.js';
export { accountPolicy } from './embedded.js';
export { dataFolder, type Purpose } from './folder/defaultFolder.js';
export { type Answer, askKeeper, type Holder } from './keeper/controlSocket.js';
export { findKeeper, type HolderNote } from './keeper/holderFile.js';
export type { Keeper } from './keeper/keeper.js';
export { type DatabaseKind, type DatabaseOptions, type OpenDatabase, openDatabase } from './openDatabase.js';
export { DatabaseProblem, type DatabaseProblemCode } from './problem.js';
