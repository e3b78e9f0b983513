export * from '@evenfall/physiology';
export * from '@evenfall/physiology/audio';
export * from '../packages/web/src/practice/audio/index.js';
