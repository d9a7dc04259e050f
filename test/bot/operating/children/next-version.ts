import { MIGRATIONS, type Migrations } from '../../../../bot/store/migrations/migrations.ts';

// The bot as a next version would be: its database has one table more.
const known: Record<string, Migrations[string]> = MIGRATIONS;
known['9000-next-version'] = {
  up: (db) => db.schema.createTable('next_version').addColumn('id', 'text').execute(),
};
await import('../../../../bot/main.ts');
