import { randomBytes } from 'node:crypto';
import { Client } from 'pg';

/** Makes an empty database beside the one of the address, and gives its address. */
export async function createFreshDatabase(adminUrl: string): Promise<string> {
  const name = `evenfall_test_${randomBytes(8).toString('hex')}`;
  await asAdmin(adminUrl, `create database ${name} encoding 'UTF8' template template0`);
  const url = new URL(adminUrl);
  url.pathname = `/${name}`;
  return url.toString();
}

export async function dropDatabase(adminUrl: string, url: string): Promise<void> {
  await asAdmin(adminUrl, `drop database if exists ${new URL(url).pathname.slice(1)} with (force)`);
}

async function asAdmin(adminUrl: string, statement: string): Promise<void> {
  const client = new Client({ connectionString: adminUrl });
  await client.connect();
  try {
    await client.query(statement);
  } finally {
    await client.end();
  }
}
