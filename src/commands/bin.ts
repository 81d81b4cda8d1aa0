#!/usr/bin/env node
// The command as it is installed.
import { main } from './bosswright';
import { ended } from '../cli/ended';

await ended(main, process.argv.slice(2));
