import type { ChildProcess } from 'node:child_process';
import type { Settings } from '@evenfall/api';

export function freshFolder(): { folder: string; remove: () => void };
export function startServer(
  folder: string,
  more?: Partial<Settings>,
): Promise<{
  child: ChildProcess;
  ended: Promise<number | null>;
  address: string;
  stop: () => Promise<number | null>;
}>;
export function processTree(pid: number): number[];
