import { v7 } from 'uuid';

/** Makes a new id each time. A test passes one that counts. */
export type Ids = () => string;

/** UUIDs of version 7, made here so that sending twice keeps once. Nobody reads a time from them. */
export const uuids: Ids = () => v7();
